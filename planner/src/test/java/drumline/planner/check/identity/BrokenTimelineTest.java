package drumline.planner.check.identity;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.cycle.timeline.OperationSpan;
import drumline.cycle.timeline.TimeElement;
import drumline.cycle.timeline.Timeline;
import drumline.planner.check.Finding;
import drumline.planner.check.TimelineReport;
import drumline.planner.check.sample.PinStudy;
import drumline.planner.check.sample.TimelineEdit;
import drumline.planner.translate.sample.DrumSample;
import drumline.shop.machine.Equipment;
import drumline.shop.operation.CutSpec;
import drumline.shop.operation.Loads;
import drumline.shop.operation.Operation;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A sound timeline spoilt in one way after another: each rule must notice. */
class BrokenTimelineTest {

  /**
   * A way to spoil the sound study.
   *
   * @param name rule that must be found broken
   * @param words part of what it must say
   * @param study the spoilt study
   */
  record Spoilt(String name, String words, PinStudy study) {
    @Override
    public String toString() {
      return name + ": " + words;
    }
  }

  static Stream<Spoilt> places() {
    PinStudy sound = PinStudy.sound();
    return Stream.of(
        new Spoilt("every-operation-once", "tap has 0 places", sound.without("tap")),
        new Spoilt(
            "every-operation-once",
            "rough (0.000–",
            sound.with(TimelineEdit.span("rough", s -> atSpeed(s, 2900)))),
        new Spoilt(
            "slide-fits", "works from the wrong side", sound.placed("drill", "1-cross", 4200)),
        new Spoilt("slide-fits", "wrong end", sound.placed("back-face", "2-end", 3000)),
        new Spoilt(
            "slide-fits",
            "lacks POLYGON_DRIVE",
            sound.withOperation("groove", o -> needing(o, Equipment.POLYGON_DRIVE))),
        new Spoilt(
            "slide-seats",
            "2-cross carries 4 tools on 3",
            sound.placed("face", "2-cross", 3000).placed("flats", "2-cross", 0)),
        new Spoilt(
            "slide-one-tool-at-a-time", "groove", sound.with(TimelineEdit.moved("groove", -0.01))),
        new Spoilt("order", "finish follows rough", sound.placed("rough", "4-cross", 1800)),
        new Spoilt("order", "drill follows face", sound.with(TimelineEdit.moved("drill", -0.2))),
        new Spoilt("pairs", "SAME_POSITION: runout", sound.placed("bore", "4-end", 4000)),
        new Spoilt("pairs", "OTHER_POSITION: chips", sound.placed("flats", "4-cross", 0)),
        new Spoilt(
            "pairs",
            "NOT_TOGETHER: tools meet",
            sound.placed("face", "2-cross", 3000).with(TimelineEdit.moved("face", 0.4))));
  }

  static Stream<Spoilt> spindles() {
    PinStudy sound = PinStudy.sound();
    return Stream.of(
        new Spoilt(
            "spindle-condition", "want different", sound.with(TimelineEdit.moved("drill", -0.2))),
        new Spoilt("spindle-change", "follows", sound.with(TimelineEdit.moved("drill", -0.01))),
        new Spoilt(
            "spindle-first-condition",
            "before its spindle",
            sound.with(TimelineEdit.moved("flats", -0.1))),
        new Spoilt(
            "spindle-first-condition",
            "back tools",
            sound.with(TimelineEdit.moved("back-face", -0.2))),
        new Spoilt(
            "spindle-trace", "keeps its condition", sound.with(TimelineEdit.withoutSpindles())),
        new Spoilt(
            "spindle-speed", "allowed 400.0 to 4200.0", sound.placed("drill", "1-end", 4300)),
        new Spoilt(
            "spindle-speed", "allowed 400.0 to 5000.0", sound.placed("cut-off", "6-cross", 5200)),
        new Spoilt("common-speed", "at once", sound.on(DrumSample.common(6))));
  }

  static Stream<Spoilt> times() {
    PinStudy sound = PinStudy.sound();
    return Stream.of(
        new Spoilt(
            "elements-without-gaps",
            "rough",
            sound.with(TimelineEdit.withoutElement("rough", TimeElement.Kind.APPROACH))),
        new Spoilt(
            "cutting-time",
            "needs 2.800 s",
            sound.with(TimelineEdit.shorter("rough", TimeElement.Kind.CUT, 0.01))),
        new Spoilt(
            "cutting-time",
            "dwells for",
            sound.with(TimelineEdit.shorter("rough", TimeElement.Kind.DWELL, 0.01))),
        new Spoilt(
            "cutting-time",
            "tap",
            sound.with(TimelineEdit.shorter("tap", TimeElement.Kind.CUT, 0.01))),
        new Spoilt(
            "rapid-time",
            "drill",
            sound.with(TimelineEdit.shorter("drill", TimeElement.Kind.RETRACT, 0.01))),
        new Spoilt(
            "rapid-time",
            "face",
            sound.with(TimelineEdit.shorter("face", TimeElement.Kind.APPROACH, 0.01))));
  }

  static Stream<Spoilt> loads() {
    PinStudy sound = PinStudy.sound();
    return Stream.of(
        new Spoilt("spindle-torque", "41.0 of 40.0 Nm", loaded(sound, "flats", 41, 0, 0)),
        // 20 + 1 Nm at 4000 rev/min is 8.8 kW, 22 + 1 is 9.6 kW.
        new Spoilt("spindle-power", "[bore, finish] at 4000", loaded(sound, "finish", 22, 0, 0)),
        new Spoilt("spindle-power", "of 5.00 kW", loaded(sound, "back-face", 12, 0, 0)),
        new Spoilt("grip", "[bore, finish] at 4000", loaded(sound, "finish", 0.5, 1700, 0)),
        new Spoilt("grip", "of 9000 N", loaded(sound, "back-face", 5, 400, 0)),
        new Spoilt("slide-thrust", "4100 N of 4000 N", loaded(sound, "drill", 1, 0, 4100)));
  }

  static Stream<Spoilt> cycles() {
    PinStudy sound = PinStudy.sound();
    Timeline t = sound.timeline();
    double grippedS = t.findOperation("cut-off").orElseThrow().startS() - 0.2;
    return Stream.of(
        new Spoilt("cut-off", "not in the last", sound.placed("cut-off", "5-cross", 3000)),
        new Spoilt("cut-off", "has not ended", sound.with(TimelineEdit.moved("chamfer", 0.2))),
        new Spoilt("bar-feed", "the bar is fed", sound.with(TimelineEdit.work(2.9, t.indexS()))),
        new Spoilt("pick-up", "is away", sound.with(TimelineEdit.moved("back-face", 2))),
        new Spoilt(
            "pick-up",
            "before the piece is gripped",
            sound.with(TimelineEdit.moved("cut-off", -grippedS))),
        new Spoilt(
            "cycle",
            "does not end within",
            sound.with(TimelineEdit.work(t.workS() - 0.01, t.indexS()))),
        new Spoilt("cycle", "index of 0.500 s", sound.with(TimelineEdit.work(t.workS(), 0.5))),
        new Spoilt("slack", "with slack", sound.with(TimelineEdit.slackBy(0.1))));
  }

  static Stream<Spoilt> all() {
    return Stream.of(places(), spindles(), times(), loads(), cycles()).flatMap(s -> s);
  }

  @Test
  void theSoundStudyPasses() {
    TimelineReport report = PinStudy.sound().report();
    assertThat(report.broken()).isEmpty();
    assertThat(report.isPassed()).isTrue();
  }

  @ParameterizedTest
  @MethodSource("all")
  void theRuleNotices(Spoilt spoilt) {
    TimelineReport report = spoilt.study().report();
    Finding finding = report.finding(spoilt.name());
    assertThat(finding.isPassed()).isFalse();
    assertThat(finding.detail()).contains(spoilt.words());
    assertThat(report.isPassed()).isFalse();
  }

  @Test
  void everyRuleIsBrokenOnce() {
    Set<String> broken = all().map(Spoilt::name).collect(Collectors.toSet());
    assertThat(PinStudy.sound().report().findings())
        .extracting(Finding::name)
        .containsExactlyInAnyOrderElementsOf(broken);
  }

  private static OperationSpan atSpeed(OperationSpan s, double revPerMin) {
    return new OperationSpan(
        s.operationId(), s.slideId(), revPerMin, s.startS(), s.endS(), s.elements());
  }

  private static PinStudy loaded(
      PinStudy study, String id, double torqueNm, double thrustN, double feedForceN) {
    return study.withOperation(
        id, o -> copy(o, o.equipment(), new Loads(0, thrustN, 0, torqueNm, 0, feedForceN)));
  }

  private static Operation needing(Operation o, Equipment kind) {
    return copy(o, Set.of(kind), o.loads());
  }

  private static Operation copy(Operation o, Set<Equipment> equipment, Loads loads) {
    CutSpec cut = o.cut();
    return new Operation(
        o.id(),
        o.featureId(),
        o.kind(),
        o.title(),
        o.end(),
        o.slides(),
        equipment,
        o.condition(),
        o.tool(),
        cut,
        loads,
        o.removes(),
        o.reason(),
        o.ruleId(),
        o.sources());
  }
}
