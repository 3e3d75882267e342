package drumline.cutting.published;

import drumline.cutting.drive.SpindleSpeed;
import drumline.cutting.threading.ChasedThread;
import drumline.cutting.threading.DieHeadPass;
import drumline.cutting.threading.InfeedSchedule;
import drumline.cutting.threading.TappingTorque;
import drumline.cutting.threading.ThreadDepth;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Worked examples of threads from published/threading.csv. */
class ThreadingPublishedTest {
  static Stream<PublishedCase> cases() {
    return PublishedCase.read("threading.csv");
  }

  @ParameterizedTest
  @MethodSource("cases")
  void agreesWithItsSource(PublishedCase example) {
    example.check(answer(example));
  }

  private static double answer(PublishedCase c) {
    return switch (c.quantity()) {
      case "cutTorque" -> TappingTorque.cutNm(c.get("kc"), c.get("P"), c.get("D"));
      case "depthTorque" ->
          TappingTorque.byDepthNm(c.get("kc"), c.get("K"), c.get("D"), c.get("D0"), c.get("theta"));
      case "outsideDepth" -> ThreadDepth.outsideMm(c.get("P"));
      case "insideDepth" -> ThreadDepth.insideMm(c.get("P"));
      case "equalArea" ->
          InfeedSchedule.equalAreaMm(ThreadDepth.outsideMm(c.get("P")), c.count("N"))
              .get(c.count("k") - 1);
      case "easedFirst" ->
          InfeedSchedule.easedFirstMm(ThreadDepth.outsideMm(c.get("P")), c.count("N"))
              .get(c.count("k") - 1);
      case "chased" ->
          new ChasedThread(c.get("l"), c.get("run"), 0, c.get("P"), 1, c.count("N"), 0, c.get("tr"))
              .timeS(c.get("n"));
      case "dieHeadMin" ->
          new DieHeadPass(c.get("l"), 0, 0, c.get("P"), 0)
                  .timeS(SpindleSpeed.revPerMin(c.get("v"), c.get("d")))
              / 60;
      default -> throw c.unknown();
    };
  }
}
