package drumline.economics.triage;

import drumline.shop.inquiry.Inquiry;
import drumline.shop.machine.Equipment;
import drumline.shop.machine.Machine;
import drumline.shop.part.Part;
import java.util.Optional;

/** A figure that a rule can ask for. */
public enum Measure {
  /** Pieces from one set-up. */
  PIECES_PER_LOT,
  /** Pieces in a year. */
  PIECES_PER_YEAR,
  /** Length of the piece over the size of the bar. */
  LENGTH_OVER_BAR,
  /** Tools, both ends. */
  TOOLS,
  /** Tightest tolerance of a diameter, as a grade of ISO 286. */
  TIGHTEST_IT_GRADE,
  /** Finest roughness asked. */
  FINEST_RA,
  /** Bar across its corners, against the machine's capacity. */
  ACROSS_CORNERS,
  /** Length of the piece, against the machine's longest. */
  PIECE_LENGTH,
  /** Bar as bought, against the longest that the machine loads. */
  BAR_LENGTH,
  /** Tools at the drum, against its seats. */
  FRONT_TOOLS,
  /** Driven tools, against seats that drive them. */
  LIVE_TOOLS,
  /** Operations that need a Y axis, against seats with one. */
  Y_AXES,
  /** Operations that need a held or controlled spindle, against seats with one. */
  C_AXES,
  /** Tools at the cut-off side, against the pick-up spindle's seats. */
  BACK_TOOLS;

  /** The figure of a piece; empty where the piece has nothing of the kind. */
  Optional<Measured> ofPiece(Inquiry inquiry, ToolNeed need) {
    Part part = inquiry.part();
    return switch (this) {
      case PIECES_PER_LOT -> figure((double) inquiry.volumes().perLotCount());
      case PIECES_PER_YEAR -> figure((double) inquiry.volumes().perYearCount());
      case LENGTH_OVER_BAR -> figure(part.lengthMm() / inquiry.bar().sizeMm());
      case TOOLS -> Optional.of(Measured.figure(need.allCount(), need.countedOn()));
      case TIGHTEST_IT_GRADE -> Tightest.grade(part);
      case FINEST_RA -> Tightest.roughness(part);
      default -> throw new IllegalArgumentException(this + ": allowed in rules about machines");
    };
  }

  /** The figure of a piece and the limits of a machine. */
  Optional<Measured> onMachine(Inquiry inquiry, ToolNeed need, Machine machine) {
    return Optional.of(
        switch (this) {
          case ACROSS_CORNERS ->
              Measured.against(inquiry.bar().acrossCornersMm(), machine.barFeed().capacityMm());
          case PIECE_LENGTH ->
              Measured.against(inquiry.part().lengthMm(), machine.maxPieceLengthMm());
          case BAR_LENGTH ->
              new Measured(
                  inquiry.bar().lengthMm(),
                  "",
                  machine.barFeed().barLengthMm(),
                  Double.POSITIVE_INFINITY);
          case FRONT_TOOLS -> Measured.against(need.frontCount(), Seats.atDrum(machine));
          case LIVE_TOOLS -> Measured.seats(need.liveCount(), machine, Equipment.LIVE_TOOL);
          case Y_AXES -> Measured.seats(need.yAxisCount(), machine, Equipment.Y_AXIS);
          case C_AXES -> Measured.seats(need.cAxisCount(), machine, Equipment.C_AXIS);
          case BACK_TOOLS -> Measured.against(need.backCount(), Seats.atPickUp(machine));
          default -> throw new IllegalArgumentException(this + ": allowed in rules about pieces");
        });
  }

  private static Optional<Measured> figure(double valueRatio) {
    return Optional.of(Measured.figure(valueRatio, ""));
  }
}
