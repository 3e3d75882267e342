package drumline.drawing;

import drumline.shop.contour.BoreStep;
import drumline.shop.contour.BoreStep.Bottom;
import drumline.shop.contour.Edge;
import drumline.shop.contour.End;
import drumline.shop.contour.OutsideStep;
import drumline.shop.contour.OutsideStep.Surface;
import drumline.shop.contour.Relation;
import drumline.shop.feature.CrossHole;
import drumline.shop.feature.Engraving;
import drumline.shop.feature.FaceHoles;
import drumline.shop.feature.Feature;
import drumline.shop.feature.Flats;
import drumline.shop.feature.Groove;
import drumline.shop.feature.Knurl;
import drumline.shop.feature.MilledSlot;
import drumline.shop.feature.ScrewThread;
import drumline.shop.feature.SlottedForm;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import drumline.shop.tolerance.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Random crowded prints: many steps, bores from both ends, and a feature of every kind. */
public final class RandomPrints {

  private static final Tolerance H9 = Pieces.tolerance("h9", -0.043, 0);
  private static final Tolerance LIMITS = Pieces.tolerance("+0.05/-0.02", -0.02, 0.05);

  private final Random random;

  public RandomPrints(long seed) {
    this.random = new Random(seed);
  }

  public Bar bar() {
    return new Bar(Bar.Shape.ROUND, 32, 0, "h9", 3000);
  }

  public Part part() {
    List<OutsideStep> steps = new ArrayList<>();
    double zMm = 0;
    int count = 2 + random.nextInt(8);
    for (int i = 0; i < count; i++) {
      double toMm = zMm + between(1.5, 9);
      double startMm = between(20, 31);
      double endMm = random.nextInt(5) == 0 ? startMm - 1 : startMm;
      Edge edge = new Edge(Edge.Kind.CHAMFER, random.nextInt(3) * 0.2, 45);
      Tolerance tolerance = random.nextBoolean() ? H9 : Pieces.GENERAL;
      double raUm = random.nextBoolean() ? 3.2 : 0.8;
      steps.add(
          new OutsideStep(
              "o" + i,
              zMm,
              toMm,
              startMm,
              endMm,
              Surface.TURNED,
              tolerance,
              raUm,
              edge,
              Edge.NONE));
      zMm = toMm;
    }
    List<BoreStep> front = bores(End.FRONT, zMm * 0.45);
    List<BoreStep> back = bores(End.BACK, zMm * 0.45);
    return new Part(
        "Crowded print with a name of some length, number " + random.nextInt(100),
        zMm,
        LIMITS,
        3.2,
        3.2,
        steps,
        front,
        back,
        features(zMm, front, steps),
        List.of(new Relation(Relation.Kind.PERPENDICULARITY, "o0", "o1", 0.02)));
  }

  private List<BoreStep> bores(End end, double roomMm) {
    List<BoreStep> steps = new ArrayList<>();
    double atMm = 0;
    double diaMm = between(12, 16);
    int count = random.nextInt(4);
    for (int i = 0; i < count; i++) {
      double toMm = atMm + roomMm / 4 * (0.3 + 0.7 * random.nextDouble());
      Bottom bottom = random.nextBoolean() ? Bottom.FLAT : Bottom.DRILL_POINT;
      steps.add(
          new BoreStep(
              end + "-" + i,
              end,
              atMm,
              toMm,
              diaMm,
              diaMm,
              H9,
              1.6,
              new Edge(Edge.Kind.CHAMFER, 0.3, 45),
              bottom));
      atMm = toMm;
      diaMm -= between(1, 4);
    }
    return steps;
  }

  private List<Feature> features(double lengthMm, List<BoreStep> front, List<OutsideStep> steps) {
    List<Feature> features = new ArrayList<>();
    OutsideStep step = steps.get(random.nextInt(steps.size()));
    double from = step.fromZMm();
    double to = step.toZMm();
    double half = (from + to) / 2;
    Tolerance any = Pieces.GENERAL;
    features.add(
        switch (random.nextInt(7)) {
          case 0 -> new Flats("x", from, half, 19, 2 + random.nextInt(5), Flats.Method.AUTO, H9);
          case 1 -> new Knurl("x", step.id(), from + 0.3, to - 0.3, 0.6, Knurl.Form.STRAIGHT);
          case 2 ->
              new CrossHole(
                  "x",
                  half,
                  0,
                  random.nextInt(2) * 15,
                  2,
                  5,
                  3,
                  CrossHole.Reach.ONE_SIDE,
                  any,
                  Pieces.thread("M2.5", 2.5, 0.45));
          case 3 -> new MilledSlot("x", MilledSlot.Place.OUTSIDE, from, 3, 2, half - from, 2, H9);
          case 4 -> new MilledSlot("x", MilledSlot.Place.FRONT_FACE, 0, 3, 2, 20, 1, H9);
          case 5 -> new Engraving("x", "A<7>&", Engraving.Place.OUTSIDE, half, 2, 0.2);
          default -> new SlottedForm("x", End.FRONT, SlottedForm.Form.HEXAGON, 10, 1, 3, 10, H9);
        });
    features.add(
        new Groove("g1", Groove.Place.OUTSIDE, End.FRONT, lengthMm * 0.6, 1.1, 19, 0, H9, 3.2));
    features.add(new Groove("g2", Groove.Place.FACE, End.BACK, 17, 1, 0, 1, any, 3.2));
    features.add(new FaceHoles("h1", End.FRONT, 18, 1.2, 4, 3, any, null));
    if (!front.isEmpty()) {
      features.add(
          new ScrewThread(
              "t1",
              front.get(0).id(),
              Pieces.thread("M16 × 1 – 6H", 16, 1),
              2,
              ScrewThread.Method.AUTO));
      features.add(new Groove("g3", Groove.Place.INSIDE, End.FRONT, 0.8, 0.6, 16.5, 0, any, 3.2));
    }
    return features;
  }

  private double between(double fromMm, double toMm) {
    return Math.round((fromMm + (toMm - fromMm) * random.nextDouble()) * 100) / 100.0;
  }
}
