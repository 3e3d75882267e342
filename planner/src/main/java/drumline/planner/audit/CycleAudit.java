package drumline.planner.audit;

import drumline.planner.model.CutOff;
import drumline.planner.model.PickUp;
import drumline.planner.model.PlanningProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Cut-off, pick-up and the cycle that holds everything. */
final class CycleAudit {
  private final PlanningProblem problem;
  private final Map<String, PlacedTask> placed;
  private final int cycleMs;

  CycleAudit(PlanningProblem problem, Map<String, PlacedTask> placed, int cycleMs) {
    this.problem = problem;
    this.placed = placed;
    this.cycleMs = cycleMs;
  }

  List<AuditCheck> checks() {
    return List.of(
        new AuditCheck("cut-off", problem.cutOff().map(this::cutOff).orElse(List.of())),
        new AuditCheck("pick-up", problem.pickUp().map(this::pickUp).orElse(List.of())),
        new AuditCheck("cycle", cycle()));
  }

  private PlacedTask cut() {
    return Objects.requireNonNull(placed.get(problem.cutOff().orElseThrow().taskId()));
  }

  private List<String> cutOff(CutOff rule) {
    List<String> broken = new ArrayList<>();
    PlacedTask cut = cut();
    if (cut.position() != problem.positionCount()) {
      broken.add(cut.words() + " is not in the last position");
    }
    for (PlacedTask t : placed.values()) {
      boolean together = rule.overlapTaskIds().contains(t.id());
      int limitMs = together ? cut.at().endMs() : cut.at().startMs();
      if (!t.id().equals(cut.id()) && t.position() == cut.position() && t.at().endMs() > limitMs) {
        broken.add(t.words() + " is still in cut at " + cut.words());
      }
    }
    return broken;
  }

  private List<String> pickUp(PickUp rule) {
    List<String> broken = new ArrayList<>();
    PlacedTask cut = cut();
    if (cut.at().startMs() < rule.gripMs()) {
      broken.add(cut.words() + " begins before the piece is gripped, at " + rule.gripMs() + " ms");
    }
    int backEndMs =
        placed.values().stream()
            .filter(t -> t.position() > problem.positionCount())
            .mapToInt(t -> t.at().endMs())
            .max()
            .orElse(0);
    long tripMs =
        (long) rule.gripMs()
            + cut.mode().durationMs()
            + rule.retractMs()
            + backEndMs
            + rule.ejectMs()
            + rule.returnMs();
    long allowedMs = (long) cycleMs * rule.spindleCount();
    if (tripMs > allowedMs) {
      broken.add("the pick-up spindle is away for " + tripMs + " ms of " + allowedMs + " ms");
    }
    return broken;
  }

  private List<String> cycle() {
    List<String> broken = new ArrayList<>();
    for (PlacedTask t : placed.values()) {
      boolean isCut = problem.cutOff().filter(c -> c.taskId().equals(t.id())).isPresent();
      long endMs = (long) t.at().endMs() + problem.indexMs();
      endMs += isCut ? problem.cutOff().orElseThrow().barFeedMs() : 0;
      if (t.position() <= problem.positionCount() && endMs > cycleMs) {
        broken.add(
            t.words() + " with the index needs " + endMs + " ms of a cycle of " + cycleMs + " ms");
      }
    }
    return broken;
  }
}
