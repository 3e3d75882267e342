package drumline.cutting.published;

import drumline.cutting.drive.SpindleSpeed;
import drumline.cutting.turning.StraightPass;
import drumline.cutting.turning.SurfaceSpeed;
import drumline.cutting.turning.SurfaceSpeedFacing;
import drumline.cutting.turning.SurfaceSpeedTaper;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Worked examples of turning and facing from published/turning.csv. */
class TurningPublishedTest {
  static Stream<PublishedCase> cases() {
    return PublishedCase.read("turning.csv");
  }

  @ParameterizedTest
  @MethodSource("cases")
  void agreesWithItsSource(PublishedCase example) {
    example.check(answer(example));
  }

  private static double answer(PublishedCase c) {
    return switch (c.quantity()) {
      case "passMin" ->
          new StraightPass(c.get("l"), 0, 0, c.get("f"))
                  .timeS(SpindleSpeed.revPerMin(c.get("v"), c.get("d")))
              / 60;
      case "passAtFeedMin" ->
          new StraightPass(c.get("l"), c.get("run"), 0, c.get("f"))
                  .timeS(SpindleSpeed.revPerMin(c.get("v"), c.get("d")))
              / 60;
      case "revs" -> new StraightPass(c.get("l"), 0, 0, c.get("f")).revolutionsCount();
      case "rpm" -> SpindleSpeed.revPerMin(c.get("v"), c.get("d"));
      case "clampDiameter" -> 2 * SurfaceSpeed.clampedAt(c.get("v"), c.get("nmax")).clampRadiusMm();
      case "cssS" -> facingS(c);
      case "cssMin" -> facingS(c) / 60;
      case "taperMin" -> taper(c).timeS(free(c)) / 60;
      case "equalSlantRpm" -> 60 * taper(c).slantMm() / (c.get("f") * taper(c).timeS(free(c)));
      case "equalAxisRpm" -> 60 * c.get("l") / (c.get("f") * taper(c).timeS(free(c)));
      default -> throw c.unknown();
    };
  }

  private static SurfaceSpeedTaper taper(PublishedCase c) {
    return new SurfaceSpeedTaper(c.get("d1"), c.get("d2"), c.get("l"), c.get("f"));
  }

  private static SurfaceSpeed free(PublishedCase c) {
    return SurfaceSpeed.clampedAt(c.get("v"), 100_000);
  }

  private static double facingS(PublishedCase c) {
    return new SurfaceSpeedFacing(c.get("R0"), c.get("R1"), c.get("f"))
        .timeS(SurfaceSpeed.clampedAt(c.get("v"), c.get("nmax")));
  }
}
