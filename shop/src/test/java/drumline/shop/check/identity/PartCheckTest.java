package drumline.shop.check.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import drumline.shop.check.PartCheck;
import drumline.shop.contour.BoreStep;
import drumline.shop.contour.BoreStep.Bottom;
import drumline.shop.contour.Edge;
import drumline.shop.contour.End;
import drumline.shop.contour.OutsideStep;
import drumline.shop.contour.OutsideStep.Surface;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import drumline.shop.problem.Problem;
import drumline.shop.tolerance.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Pieces made sound by construction pass; with one thing spoilt, that thing is named. */
class PartCheckTest {

  private static final double BAR_MM = 32;
  private static final Tolerance WIDE = new Tolerance("±0.1", -0.1, 0.1, OptionalInt.empty());

  static LongStream seeds() {
    return LongStream.range(0, 40);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void soundPiecesPass(long seed) {
    assertThat(errors(sound(new Random(seed)))).isEmpty();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void aShiftedStepIsAGap(long seed) {
    Part part = sound(new Random(seed));
    List<OutsideStep> steps = new ArrayList<>(part.outside());
    OutsideStep last = steps.remove(steps.size() - 1);
    steps.add(outside(last.id(), last.fromZMm() + 0.5, last.toZMm(), last.startDiameterMm()));

    assertThat(errors(with(part, steps, part.frontBore())))
        .extracting(Problem::code, Problem::where)
        .containsExactly(tuple("outside-gap", last.id()));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void aStepLargerThanTheBarIsNamed(long seed) {
    Part part = sound(new Random(seed));
    List<OutsideStep> steps = new ArrayList<>(part.outside());
    OutsideStep first = steps.get(0);
    steps.set(0, outside(first.id(), 0, first.toZMm(), BAR_MM + 1));

    assertThat(errors(with(part, steps, part.frontBore())))
        .extracting(Problem::code, Problem::where)
        .containsExactly(tuple("bar-too-small", first.id()));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void aBoreAsLargeAsTheOutsideLeavesNoWall(long seed) {
    Part part = sound(new Random(seed));
    double mouthMm = part.outside().get(0).startDiameterMm();
    List<BoreStep> bores = List.of(bore("bore", 0, part.outside().get(0).toZMm(), mouthMm));

    assertThat(errors(with(part, part.outside(), bores)))
        .extracting(Problem::code, Problem::where)
        .containsExactly(tuple("no-wall", "bore"));
  }

  private static List<Problem> errors(Part part) {
    Bar bar = new Bar(Bar.Shape.ROUND, BAR_MM, 0, "h9", 3000);
    return PartCheck.check(part, bar).stream()
        .filter(problem -> problem.severity() == Problem.Severity.ERROR)
        .toList();
  }

  /** Two to six steps of 4 to 12 mm, each Ø 16 to 31, over a bore that narrows from Ø 14. */
  private static Part sound(Random random) {
    List<OutsideStep> steps = new ArrayList<>();
    double zMm = 0;
    for (int i = 0; i < 2 + random.nextInt(5); i++) {
      double toMm = zMm + 4 + 8 * random.nextDouble();
      steps.add(outside("step-" + i, zMm, toMm, 16 + 15 * random.nextDouble()));
      zMm = toMm;
    }
    double wideMm = 8 + 6 * random.nextDouble();
    double depthMm = zMm * (0.2 + 0.3 * random.nextDouble());
    List<BoreStep> bores =
        List.of(bore("wide", 0, depthMm, wideMm), bore("narrow", depthMm, zMm * 0.9, wideMm * 0.6));
    return new Part("piece", zMm, WIDE, 3.2, 3.2, steps, bores, List.of(), List.of(), List.of());
  }

  private static Part with(Part part, List<OutsideStep> outside, List<BoreStep> bores) {
    return new Part(
        part.name(),
        part.lengthMm(),
        WIDE,
        3.2,
        3.2,
        outside,
        bores,
        List.of(),
        List.of(),
        List.of());
  }

  private static OutsideStep outside(String id, double fromMm, double toMm, double diameterMm) {
    return new OutsideStep(
        id, fromMm, toMm, diameterMm, diameterMm, Surface.TURNED, WIDE, 3.2, Edge.NONE, Edge.NONE);
  }

  private static BoreStep bore(String id, double fromMm, double toMm, double diameterMm) {
    return new BoreStep(
        id, End.FRONT, fromMm, toMm, diameterMm, diameterMm, WIDE, 3.2, Edge.NONE, Bottom.FLAT);
  }
}
