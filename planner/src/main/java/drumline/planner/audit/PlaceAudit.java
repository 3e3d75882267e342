package drumline.planner.audit;

import drumline.planner.model.EquipmentRules;
import drumline.planner.model.Mode;
import drumline.planner.model.PairRule;
import drumline.planner.model.Pin;
import drumline.planner.model.PlanningProblem;
import drumline.planner.model.Precedence;
import drumline.planner.model.Slide;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Rules on where tasks stand and which follows which. */
final class PlaceAudit {
  private final PlanningProblem problem;
  private final Map<String, PlacedTask> placed;

  PlaceAudit(PlanningProblem problem, Map<String, PlacedTask> placed) {
    this.problem = problem;
    this.placed = placed;
  }

  List<AuditCheck> checks() {
    return List.of(
        new AuditCheck("slide-and-mode", slideAndMode()),
        new AuditCheck("seats", seats()),
        new AuditCheck("precedence", precedence()),
        new AuditCheck("pairs", pairs()),
        new AuditCheck("pins", pins()),
        new AuditCheck("equipment", equipment()));
  }

  private PlacedTask task(String id) {
    return Objects.requireNonNull(placed.get(id), id);
  }

  private List<String> slideAndMode() {
    List<String> broken = new ArrayList<>();
    for (PlacedTask t : placed.values()) {
      if (!t.task().slideIds().contains(t.slide().id())) {
        broken.add(t.words() + " stands on a slide that cannot do it");
      }
      boolean inDrum = t.position() <= problem.positionCount();
      Mode.End end = t.mode().end();
      if ((end == Mode.End.DRUM && !inDrum) || (end == Mode.End.BACK && inDrum)) {
        broken.add(t.words() + " uses a mode for the other end");
      }
      if (t.at().endMs() - t.at().startMs() != t.mode().durationMs()) {
        broken.add(t.words() + " does not last " + t.mode().durationMs() + " ms");
      }
      if (t.at().startMs() < 0) {
        broken.add(t.words() + " starts before the index has ended");
      }
    }
    return broken;
  }

  private List<String> seats() {
    List<String> broken = new ArrayList<>();
    for (Slide slide : problem.slides()) {
      long count = placed.values().stream().filter(t -> t.slide().equals(slide)).count();
      if (count > slide.seatCount()) {
        broken.add(
            "slide "
                + slide.id()
                + " carries "
                + count
                + " tools, has seats for "
                + slide.seatCount());
      }
    }
    return broken;
  }

  private List<String> precedence() {
    List<String> broken = new ArrayList<>();
    for (Precedence rule : problem.precedences()) {
      PlacedTask before = task(rule.beforeId());
      PlacedTask after = task(rule.afterId());
      boolean kept = before.position() < after.position();
      if (before.position() == after.position()) {
        kept =
            switch (rule.sharing()) {
              case LATER_POSITION -> false;
              case SAME_SLIDE ->
                  before.slide().equals(after.slide()) && pauses(before, after, rule.lagMs());
              case ANY_SLIDE -> pauses(before, after, rule.lagMs());
            };
      }
      if (!kept) {
        broken.add(after.words() + " does not follow " + before.words());
      }
    }
    return broken;
  }

  private static boolean pauses(PlacedTask before, PlacedTask after, int lagMs) {
    return after.at().startMs() - before.at().endMs() >= lagMs;
  }

  private List<String> pairs() {
    List<String> broken = new ArrayList<>();
    for (PairRule rule : problem.pairRules()) {
      PlacedTask first = task(rule.firstId());
      PlacedTask second = task(rule.secondId());
      boolean share = first.position() == second.position();
      boolean kept =
          switch (rule.kind()) {
            case MUST_SHARE -> share;
            case MUST_NOT_SHARE -> !share;
            case MUST_NOT_OVERLAP -> !share || !first.overlaps(second);
          };
      if (!kept) {
        broken.add(first.words() + " and " + second.words() + " break " + rule.kind());
      }
    }
    return broken;
  }

  private List<String> pins() {
    List<String> broken = new ArrayList<>();
    for (Pin pin : problem.pins()) {
      PlacedTask t = task(pin.taskId());
      boolean kept =
          !(pin instanceof Pin.ToPosition p && p.position() != t.position())
              && !(pin instanceof Pin.NotInPosition n && n.position() == t.position())
              && !(pin instanceof Pin.ToSlide s && !s.slideId().equals(t.slide().id()))
              && !(pin instanceof Pin.ToMode m && m.modeIndex() != t.at().modeIndex());
      if (!kept) {
        broken.add(t.words() + " left its pin " + pin);
      }
    }
    return broken;
  }

  private List<String> equipment() {
    Map<String, Set<String>> slidesByKind = new TreeMap<>();
    for (EquipmentRules.Option option : problem.equipment().options()) {
      boolean used =
          option.taskIds().stream().anyMatch(id -> task(id).slide().id().equals(option.slideId()));
      if (used) {
        slidesByKind.computeIfAbsent(option.kind(), k -> new TreeSet<>()).add(option.slideId());
      }
    }
    List<String> broken = new ArrayList<>();
    slidesByKind.forEach(
        (kind, slides) -> {
          Integer most = problem.equipment().mostByKind().get(kind);
          if (most != null && slides.size() > most) {
            broken.add(kind + " on slides " + slides + ", the machine takes " + most);
          }
        });
    return broken;
  }
}
