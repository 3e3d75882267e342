package drumline.shape.identity;

import static drumline.shape.Prints.bore;
import static drumline.shape.Prints.step;

import drumline.shape.Prints;
import drumline.shop.contour.BoreStep;
import drumline.shop.contour.BoreStep.Bottom;
import drumline.shop.contour.End;
import drumline.shop.contour.OutsideStep;
import drumline.shop.operation.CutRegion;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Random stepped pieces with the cuts that make them from Ø40 bar. */
public final class RandomPieces {

  public static final double BAR_MM = 40;
  static final double BLADE_MM = 3;

  private final Random random;

  public RandomPieces(long seed) {
    this.random = new Random(seed);
  }

  public Part part() {
    List<OutsideStep> steps = new ArrayList<>();
    double zMm = 0;
    int count = 1 + random.nextInt(6);
    for (int i = 0; i < count; i++) {
      double toMm = zMm + length(1, 12);
      steps.add(step("o" + i, zMm, toMm, length(20, 39)));
      zMm = toMm;
    }
    List<BoreStep> front = bores(End.FRONT, zMm * 0.45);
    List<BoreStep> back = bores(End.BACK, zMm * 0.45);
    return Prints.part(zMm, steps, front, back, List.of());
  }

  private List<BoreStep> bores(End end, double roomMm) {
    List<BoreStep> steps = new ArrayList<>();
    double atMm = 0;
    double diameterMm = length(10, 18);
    int count = random.nextInt(4);
    for (int i = 0; i < count; i++) {
      double toMm = atMm + roomMm / 3 * (0.2 + 0.8 * random.nextDouble());
      steps.add(bore(end + "" + i, end, atMm, toMm, diameterMm, Bottom.FLAT));
      atMm = toMm;
      diameterMm -= length(0.5, 3);
    }
    return steps;
  }

  /** One cut for each step, some of them overlapping, and the cut-off at the end. */
  public List<Operation> cuts(Part part) {
    List<Operation> cuts = new ArrayList<>();
    for (OutsideStep step : part.outside()) {
      double rMm = step.startDiameterMm() / 2;
      cuts.add(cut(step.id(), step.fromZMm(), step.toZMm(), rMm, BAR_MM / 2 + 1));
      if (random.nextBoolean()) {
        cuts.add(cut(step.id() + "x", step.fromZMm(), step.toZMm(), rMm, BAR_MM / 2));
      }
    }
    for (BoreStep step : part.frontBore()) {
      cuts.add(cut(step.id(), -1, step.toDepthMm(), 0, step.startDiameterMm() / 2));
    }
    cuts.add(
        Prints.operation(
            "off",
            OperationKind.CUT_OFF,
            CutRegion.rectangle(part.lengthMm(), part.lengthMm() + BLADE_MM, 0, BAR_MM / 2 + 1)));
    for (BoreStep step : part.backBore()) {
      double lengthMm = part.lengthMm();
      cuts.add(
          cut(step.id(), lengthMm - step.toDepthMm(), lengthMm, 0, step.startDiameterMm() / 2));
    }
    return cuts;
  }

  static Operation cut(String id, double fromMm, double toMm, double innerMm, double outerMm) {
    return Prints.operation(
        id, OperationKind.ROUGH_TURN, CutRegion.rectangle(fromMm, toMm, innerMm, outerMm));
  }

  /** Volume by adding cylinders, the slow exact way. */
  static double volumeMm3(Part part) {
    double mm3 = 0;
    for (OutsideStep step : part.outside()) {
      mm3 += Math.PI / 4 * Math.pow(step.startDiameterMm(), 2) * step.lengthMm();
    }
    for (BoreStep step : part.frontBore()) {
      mm3 -= Math.PI / 4 * Math.pow(step.startDiameterMm(), 2) * step.lengthMm();
    }
    for (BoreStep step : part.backBore()) {
      mm3 -= Math.PI / 4 * Math.pow(step.startDiameterMm(), 2) * step.lengthMm();
    }
    return mm3;
  }

  int next(int bound) {
    return random.nextInt(bound);
  }

  private double length(double fromMm, double toMm) {
    return Math.round((fromMm + (toMm - fromMm) * random.nextDouble()) * 1000) / 1000.0;
  }
}
