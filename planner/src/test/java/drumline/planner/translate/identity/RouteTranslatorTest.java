package drumline.planner.translate.identity;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.planner.model.Mode;
import drumline.planner.model.PlanningProblem;
import drumline.planner.model.SpindleCondition;
import drumline.planner.model.Task;
import drumline.planner.translate.RouteTranslator;
import drumline.planner.translate.TranslationResult;
import drumline.planner.translate.sample.DrumSample;
import drumline.planner.translate.sample.OperationDraft;
import drumline.planner.translate.sample.RouteSample;
import drumline.shop.inquiry.Pin;
import drumline.shop.machine.Equipment;
import drumline.shop.machine.Machine;
import drumline.shop.machine.SlideKind;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.OrderRule;
import drumline.shop.operation.Route;
import drumline.shop.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class RouteTranslatorTest {
  private final Machine machine = DrumSample.independent(6);

  private TranslationResult translate(Route route, Pin... pins) {
    return RouteTranslator.translate(
        route, machine, DrumSample.part(30), DrumSample.bar(20), List.of(pins));
  }

  private PlanningProblem problem(Route route, Pin... pins) {
    TranslationResult result = translate(route, pins);
    assertThat(result.problems()).isEmpty();
    return result.translation().orElseThrow().problem();
  }

  private static Task task(PlanningProblem problem, String id) {
    return problem.tasks().stream().filter(t -> t.id().equals(id)).findFirst().orElseThrow();
  }

  @Test
  void timesAreRoundedUpAndSpeedsDown() {
    // Rough: 140 turns and 1 of dwell at 3000: 2820 ms; approach and retract of 4 mm at 8 m/s²:
    // 2·√(0.004/8) = 44.72 ms each: 2909.4, so 2910 ms.
    Mode fastest = last(task(problem(RouteSample.pin()), "rough").modes());
    assertThat(fastest.revPerMin()).isEqualTo(3000);
    assertThat(fastest.durationMs()).isEqualTo(2910);
    // 7 Nm of min(40, 9549.3·9/3000 = 28.65) Nm: 244.3 ‰.
    assertThat(fastest.spindleSharePermille()).isEqualTo(245);
    // Pull 2·7/0.020 = 700 N with 350 N: 782.6 N; ·2/(0.15·(22000 − 0.3·0.02·(100π)²)) = 487.4 ‰.
    assertThat(fastest.gripSharePermille()).isEqualTo(488);
    assertThat(last(task(problem(RouteSample.pin()), "finish").modes()).revPerMin())
        .isEqualTo(4000);
  }

  @Test
  void speedsAreEachOthersFastest() {
    // At or above the groove's lowest of 400 and up to its 2600: its own and the thread's 1800.
    assertThat(task(problem(RouteSample.pin()), "groove").modes())
        .extracting(Mode::revPerMin)
        .containsExactly(1800, 2600);
  }

  @Test
  void conditionsCutOffAndPickUpAreCarriedOver() {
    PlanningProblem problem = problem(RouteSample.pin());
    assertThat(task(problem, "flats").modes())
        .extracting(Mode::condition)
        .containsExactly(SpindleCondition.HELD);
    assertThat(task(problem, "tap").modes())
        .extracting(Mode::condition)
        .containsExactly(SpindleCondition.ANY);
    assertThat(task(problem, "cut-off").slideIds()).containsExactly("6-cross");
    // The pick-up spindle's 5000 rev/min bind the cut-off, which could go 5500.
    assertThat(last(task(problem, "cut-off").modes()).revPerMin()).isEqualTo(5000);
    assertThat(task(problem, "back-face").slideIds()).containsExactly("back-1", "back-2");
    assertThat(task(problem, "chamfer").slideIds()).hasSize(14);
    assertThat(task(problem, "chamfer").modes())
        .extracting(Mode::end)
        .contains(Mode.End.DRUM, Mode.End.BACK);
    assertThat(problem.pickUp().orElseThrow().carryMs()).isEqualTo(1300);
    assertThat(problem.cutOff().orElseThrow().barFeedMs()).isEqualTo(600);
    assertThat(problem.indexMs()).isEqualTo(550);
  }

  @Test
  void manySpeedsAreMergedAndNothingLosesItsLast() {
    List<Operation> operations = new ArrayList<>(RouteSample.pin().operations());
    for (int k = 0; k < 40; k++) {
      double highest = 1500 + 37 * k;
      operations.add(
          new OperationDraft("t" + k, OperationKind.FINISH_TURN)
              .turns(10, 0.99 * highest, highest)
              .done());
    }
    TranslationResult result = translate(new Route(operations, List.of(), List.of(), List.of()));
    assertThat(result.problems()).isEmpty();
    assertThat(result.translation().orElseThrow().notes()).hasSize(1);
    for (Task task : result.translation().orElseThrow().problem().tasks()) {
      assertThat(task.modes()).isNotEmpty();
    }
  }

  @Test
  void everythingThatStandsAgainstPlanningIsToldAtOnce() {
    Route route =
        new Route(
            List.of(
                new OperationDraft("heavy", OperationKind.DRILL)
                    .turns(10, 100, 1000)
                    .from(SlideKind.END)
                    .loads(5, 9000)
                    .done(),
                new OperationDraft("polygon", OperationKind.POLYGON_TURN)
                    .turns(10, 100, 1000)
                    .with(Equipment.POLYGON_DRIVE)
                    .done(),
                new OperationDraft("strong", OperationKind.FORM_TURN)
                    .turns(10, 100, 1000)
                    .loads(60, 0)
                    .done()),
            List.of(new OrderRule("heavy", "gone", "", "")),
            List.of(),
            List.of());
    TranslationResult result =
        RouteTranslator.translate(
            route, machine, DrumSample.part(90), DrumSample.bar(32), List.of());
    assertThat(result.translation()).isEmpty();
    assertThat(result.problems())
        .extracting(Problem::code)
        .containsExactly(
            "bar-too-large",
            "piece-too-long",
            "no-cut-off",
            "unknown-operation",
            "no-slide",
            "no-slide",
            "no-speed");
    assertThat(result.problems().get(4).toLine())
        .contains("operation heavy")
        .contains("1-end pushes with 4000 N at most")
        .contains("a feed force of 9000 N")
        .contains("Maybe");
    assertThat(result.problems().get(5).found()).contains("1-cross cannot have polygon drive");
  }

  @Test
  void pinsAreCarriedOverOrRefusedWithTheirReason() {
    PlanningProblem problem =
        problem(
            RouteSample.pin(), pin("rough", OptionalInt.of(2), "2-cross", OptionalDouble.of(2222)));
    assertThat(problem.pins())
        .containsExactly(
            new drumline.planner.model.Pin.ToPosition("rough", 2),
            new drumline.planner.model.Pin.ToSlide("rough", "2-cross"));
    assertThat(task(problem, "rough").modes()).extracting(Mode::revPerMin).containsExactly(2222);
    TranslationResult refused =
        translate(
            RouteSample.pin(),
            pin("rough", OptionalInt.of(9), "2-end", OptionalDouble.of(5000)),
            pin("flats", OptionalInt.empty(), "", OptionalDouble.of(800)),
            pin("gone", OptionalInt.of(1), "", OptionalDouble.empty()));
    assertThat(refused.problems())
        .extracting(Problem::code)
        .containsExactly("pin-position", "pin-slide", "pin-speed", "pin-speed", "pin-operation");
    assertThat(refused.problems().get(0).toLine())
        .contains("pin of operation rough: position 9; allowed: 1 to 7");
  }

  @Test
  void oneSpeedMustSuitAllOnACommonSpeedMachine() {
    Machine common = DrumSample.common(6);
    List<Operation> operations = new ArrayList<>(RouteSample.pin().operations());
    operations.add(
        new OperationDraft("fast", OperationKind.FINISH_TURN).turns(10, 2000, 6000).done());
    Route route = new Route(operations, List.of(), List.of(), List.of());
    assertThat(
            RouteTranslator.translate(
                    route, common, DrumSample.part(30), DrumSample.bar(20), List.of())
                .problems())
        .extracting(Problem::code)
        .containsExactly("no-common-speed");
  }

  private static Pin pin(
      String operationId, OptionalInt position, String slideId, OptionalDouble speed) {
    return new Pin(operationId, position, slideId, speed);
  }

  private static Mode last(List<Mode> modes) {
    return modes.get(modes.size() - 1);
  }
}
