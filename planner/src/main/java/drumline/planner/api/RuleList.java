package drumline.planner.api;

import drumline.planner.model.EquipmentRules;
import drumline.planner.model.Mode;
import drumline.planner.model.PairRule;
import drumline.planner.model.Pin;
import drumline.planner.model.PlanningProblem;
import drumline.planner.model.Precedence;
import drumline.planner.model.Slide;
import drumline.planner.model.SpindleRules;
import drumline.planner.model.Task;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/** The rules of a problem that can clash, those a person can change most easily last. */
final class RuleList {
  private RuleList() {}

  static List<Rule> of(PlanningProblem problem) {
    List<Rule> rules = new ArrayList<>();
    problem.tasks().forEach(task -> addTask(task, rules));
    for (Slide slide : problem.slides()) {
      rules.add(
          new Rule(
              "slide "
                  + slide.id()
                  + " in position "
                  + slide.position()
                  + " has "
                  + slide.seatCount()
                  + " tool seats",
              p -> openSeats(p, slide)));
    }
    problem
        .equipment()
        .mostByKind()
        .forEach(
            (kind, most) ->
                rules.add(
                    new Rule(
                        "the machine takes " + kind + " on " + most + " slides at most",
                        p -> unlimited(p, kind))));
    if (problem.spindle().drive() == SpindleRules.Drive.COMMON_SPEED) {
      rules.add(new Rule("all positions turn at one common speed", RuleList::ownSpeeds));
    }
    for (Precedence precedence : problem.precedences()) {
      rules.add(
          new Rule(
              orderWords(precedence),
              p -> p.withPrecedences(without(p.precedences(), precedence))));
    }
    for (PairRule pair : problem.pairRules()) {
      rules.add(new Rule(pairWords(pair), p -> p.withPairRules(without(p.pairRules(), pair))));
    }
    for (Pin pin : problem.pins()) {
      rules.add(
          new Rule(
              pinWords(pin) + atCutOff(problem, pin), p -> p.withPins(without(p.pins(), pin))));
    }
    return rules;
  }

  private static void addTask(Task task, List<Rule> rules) {
    rules.add(new Rule(slidesWords(task), p -> withTask(p, task.id(), t -> openSlides(p, t))));
    if (task.modes().stream().anyMatch(Mode::isOverloaded)) {
      rules.add(
          new Rule(
              named(task) + " loads the spindle or collet above 1000 ‰ in some modes",
              p -> withTask(p, task.id(), RuleList::unloaded)));
    }
    if (task.modes().stream().anyMatch(m -> m.end() != Mode.End.EITHER)) {
      rules.add(
          new Rule(
              named(task) + " has modes for one end only",
              p -> withTask(p, task.id(), RuleList::eitherEnd)));
    }
  }

  private static String named(Task task) {
    return task.id() + (task.name().isBlank() ? "" : " (" + task.name() + ")");
  }

  private static String slidesWords(Task task) {
    return task.slideIds().isEmpty()
        ? named(task) + " has no slide that can do it"
        : named(task) + " can only be done on slides " + String.join(", ", task.slideIds());
  }

  private static String orderWords(Precedence p) {
    String where =
        switch (p.sharing()) {
          case ANY_SLIDE -> "";
          case SAME_SLIDE -> ", in one position only on the same slide";
          case LATER_POSITION -> ", in a later position";
        };
    return p.afterId() + " comes after " + p.beforeId() + where + because(p.reason());
  }

  private static String pairWords(PairRule pair) {
    String what =
        switch (pair.kind()) {
          case MUST_SHARE -> " must be in one position";
          case MUST_NOT_SHARE -> " must not be in one position";
          case MUST_NOT_OVERLAP -> " must not be in cut together";
        };
    return pair.firstId() + " and " + pair.secondId() + what + because(pair.reason());
  }

  private static String because(String reason) {
    return reason.isBlank() ? "" : " (" + reason + ")";
  }

  /** The cut-off's place is no rule that can be left out, so a pin against it says so. */
  private static String atCutOff(PlanningProblem problem, Pin pin) {
    boolean isCutOff = problem.cutOff().map(c -> c.taskId().equals(pin.taskId())).orElse(false);
    return isCutOff && pin instanceof Pin.ToPosition to && to.position() != problem.positionCount()
        ? ", but pieces are cut off in the last position, " + problem.positionCount()
        : "";
  }

  private static String pinWords(Pin pin) {
    if (pin instanceof Pin.ToPosition to) {
      return pin.taskId() + " is pinned to position " + to.position();
    }
    if (pin instanceof Pin.NotInPosition not) {
      return pin.taskId() + " must not be in position " + not.position();
    }
    if (pin instanceof Pin.ToSlide to) {
      return pin.taskId() + " is pinned to slide " + to.slideId();
    }
    return pin.taskId() + " is pinned to its mode " + ((Pin.ToMode) pin).modeIndex();
  }

  private static PlanningProblem withTask(
      PlanningProblem problem, String id, UnaryOperator<Task> change) {
    return problem.withTasks(
        problem.tasks().stream().map(t -> t.id().equals(id) ? change.apply(t) : t).toList());
  }

  private static Task openSlides(PlanningProblem problem, Task task) {
    return task.withSlideIds(problem.slides().stream().map(Slide::id).toList());
  }

  private static Task unloaded(Task task) {
    return task.withModes(task.modes().stream().map(m -> m.withShares(0, 0)).toList());
  }

  private static Task eitherEnd(Task task) {
    return task.withModes(task.modes().stream().map(m -> m.withEnd(Mode.End.EITHER)).toList());
  }

  private static PlanningProblem openSeats(PlanningProblem problem, Slide slide) {
    return problem.withSlides(
        problem.slides().stream()
            .map(
                s ->
                    s.id().equals(slide.id())
                        ? new Slide(s.id(), s.position(), problem.tasks().size(), s.toolShiftMs())
                        : s)
            .toList());
  }

  private static PlanningProblem ownSpeeds(PlanningProblem problem) {
    SpindleRules s = problem.spindle();
    return problem.withSpindle(
        new SpindleRules(
            s.runUpRevPerMinPerS(),
            s.orientMs(),
            s.topRevPerMin(),
            SpindleRules.Drive.INDEPENDENT,
            s.heldWork()));
  }

  private static PlanningProblem unlimited(PlanningProblem problem, String kind) {
    Map<String, Integer> limits = new HashMap<>(problem.equipment().mostByKind());
    limits.remove(kind);
    return problem.withEquipment(new EquipmentRules(problem.equipment().options(), limits));
  }

  private static <T> List<T> without(List<T> list, T item) {
    List<T> rest = new ArrayList<>(list);
    rest.remove(item);
    return rest;
  }
}
