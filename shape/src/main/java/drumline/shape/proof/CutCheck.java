package drumline.shape.proof;

import drumline.shape.section.HalfSection;
import drumline.shape.workpiece.PositionState;
import drumline.shape.workpiece.Removal;
import drumline.shape.workpiece.WorkpieceStates;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.Route;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Cuts as they really are, from what they find on the workpiece, against what the route assumes.
 *
 * <p>Formula: mean depth a = A / (l·i), with A area taken in the half-section in mm², l length over
 * which it is taken in mm (diagonal of each place's box) and i passes. Known limit: only cuts along
 * a contour are compared (turning and boring, rough and finish).
 *
 * @param notes what a person should look at, in the order of travel
 * @param comparedCount cuts whose depth was compared
 */
public record CutCheck(List<CutNote> notes, int comparedCount) {

  /** Difference of mean depth in mm that is not told. */
  public static final double TOLERANCE_MM = 0.1;

  /** Difference of mean depth, in percent of what is assumed, that is not told. */
  public static final double TOLERANCE_PCT = 20;

  private static final Set<OperationKind> ALONG =
      EnumSet.of(
          OperationKind.ROUGH_TURN,
          OperationKind.FINISH_TURN,
          OperationKind.ROUGH_BORE,
          OperationKind.FINISH_BORE);

  /** Copies the list. */
  public CutCheck {
    notes = List.copyOf(notes);
  }

  /**
   * Compares every cut.
   *
   * @param lastPosition number of the drum's last position
   * @throws IllegalArgumentException if the states name an operation that the route does not have
   */
  public static CutCheck of(Route route, WorkpieceStates states, int lastPosition) {
    List<CutNote> notes = new ArrayList<>();
    int comparedCount = 0;
    boolean isParted = false;
    for (PositionState state : states.positions()) {
      for (Removal removal : state.removals()) {
        Operation operation = route.operation(removal.operationId());
        comparedCount += ALONG.contains(operation.kind()) ? 1 : 0;
        Optional<CutNote> note =
            isParted && state.position() <= lastPosition
                ? afterParting(state, removal, operation)
                : depth(state, removal, operation);
        note.ifPresent(notes::add);
        isParted |= operation.kind() == OperationKind.CUT_OFF;
      }
    }
    return new CutCheck(notes, comparedCount);
  }

  private static Optional<CutNote> afterParting(
      PositionState state, Removal removal, Operation operation) {
    return removal.swept().isEmpty()
        ? Optional.empty()
        : note(
            CutNote.Kind.AFTER_PARTING, state, operation, "comes when the piece is parted already");
  }

  private static Optional<CutNote> depth(
      PositionState state, Removal removal, Operation operation) {
    if (!removal.swept().isEmpty() && removal.removed().isEmpty()) {
      return note(CutNote.Kind.CUTS_NOTHING, state, operation, "finds nothing left to take");
    }
    double realMm = meanDepthMm(removal) / Math.max(1, operation.cut().passCount());
    double assumedMm = operation.cut().depthMm();
    double mostMm = Math.max(assumedMm + TOLERANCE_MM, assumedMm * (1 + TOLERANCE_PCT / 100));
    if (!ALONG.contains(operation.kind()) || realMm <= mostMm) {
      return Optional.empty();
    }
    return note(
        CutNote.Kind.DEEPER_THAN_ASSUMED,
        state,
        operation,
        String.format(
            Locale.ROOT,
            "takes %.2f mm a pass in the mean, %.0f mm³ in all, where its loads assume %.2f mm",
            realMm,
            removal.volumeMm3(),
            assumedMm));
  }

  /** Mean depth in mm of what an operation takes; 0 where it takes nothing. */
  public static double meanDepthMm(Removal removal) {
    double lengthMm = 0;
    for (HalfSection body : removal.removed().bodies()) {
      lengthMm += Math.hypot(body.toZMm() - body.fromZMm(), body.outerRMm() - body.innerRMm());
    }
    return lengthMm == 0 ? 0 : removal.areaMm2() / lengthMm;
  }

  private static Optional<CutNote> note(
      CutNote.Kind kind, PositionState state, Operation operation, String words) {
    return Optional.of(
        new CutNote(kind, state.position(), operation.id(), operation.title() + " " + words));
  }
}
