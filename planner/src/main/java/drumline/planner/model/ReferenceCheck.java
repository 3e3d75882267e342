package drumline.planner.model;

import static drumline.planner.range.Checks.atLeast;
import static drumline.planner.range.Checks.between;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Checks that every id and index of a planning problem leads somewhere. */
final class ReferenceCheck {
  private final Map<String, Task> tasks = new HashMap<>();
  private final Set<String> slides = new HashSet<>();

  private ReferenceCheck() {}

  static void check(
      int positionCount,
      List<Slide> slides,
      List<Task> tasks,
      List<Precedence> precedences,
      List<PairRule> pairRules,
      int indexMs,
      Optional<CutOff> cutOff,
      Optional<PickUp> pickUp,
      List<Pin> pins) {
    atLeast("positionCount", positionCount, 1);
    atLeast("indexMs", indexMs, 0);
    ReferenceCheck check = new ReferenceCheck();
    check.addSlides(slides, positionCount + (pickUp.isPresent() ? 1 : 0));
    check.addTasks(tasks);
    for (Precedence p : precedences) {
      check.pair("precedences", p.beforeId(), p.afterId());
    }
    for (PairRule rule : pairRules) {
      check.pair("pairRules", rule.firstId(), rule.secondId());
    }
    cutOff.ifPresent(check::cutOff);
    if (pickUp.isPresent() && cutOff.isEmpty()) {
      throw new IllegalArgumentException("cutOff is absent, allowed with a pickUp: a cut-off task");
    }
    for (Pin pin : pins) {
      check.pin(pin, positionCount + 1);
    }
  }

  static void equipment(EquipmentRules equipment, List<Slide> slides, List<Task> tasks) {
    ReferenceCheck check = new ReferenceCheck();
    slides.forEach(s -> check.slides.add(s.id()));
    tasks.forEach(t -> check.tasks.put(t.id(), t));
    for (EquipmentRules.Option option : equipment.options()) {
      check.slide("equipment", option.slideId());
      option.taskIds().forEach(id -> check.task("equipment", id));
    }
    equipment.mostByKind().forEach((kind, most) -> atLeast("most of " + kind, most, 0));
  }

  private void addSlides(List<Slide> list, int lastPosition) {
    for (Slide slide : list) {
      between("position of slide " + slide.id(), slide.position(), 1, lastPosition);
      if (!slides.add(slide.id())) {
        throw new IllegalArgumentException("slides has " + slide.id() + " twice, allowed: once");
      }
    }
  }

  private void addTasks(List<Task> list) {
    for (Task task : list) {
      if (tasks.put(task.id(), task) != null) {
        throw new IllegalArgumentException("tasks has " + task.id() + " twice, allowed: once");
      }
      for (String slideId : task.slideIds()) {
        slide("slideIds of task " + task.id(), slideId);
      }
    }
  }

  private void cutOff(CutOff cutOff) {
    task("cutOff", cutOff.taskId());
    for (String id : cutOff.overlapTaskIds()) {
      task("overlapTaskIds of the cut-off", id);
    }
  }

  private void pin(Pin pin, int lastPosition) {
    Task task = task("pins", pin.taskId());
    if (pin instanceof Pin.ToPosition to) {
      between("position of the pin of " + task.id(), to.position(), 1, lastPosition);
    } else if (pin instanceof Pin.NotInPosition not) {
      between("position of the pin of " + task.id(), not.position(), 1, lastPosition);
    } else if (pin instanceof Pin.ToSlide to) {
      slide("pin of " + task.id(), to.slideId());
    } else if (pin instanceof Pin.ToMode to) {
      between("modeIndex of the pin of " + task.id(), to.modeIndex(), 0, task.modes().size() - 1L);
    }
  }

  private void pair(String where, String firstId, String secondId) {
    task(where, firstId);
    task(where, secondId);
    if (firstId.equals(secondId)) {
      throw new IllegalArgumentException(
          where + " has " + firstId + " with itself, allowed: two tasks");
    }
  }

  private Task task(String where, String id) {
    Task task = tasks.get(id);
    if (task == null) {
      throw new IllegalArgumentException(where + " has " + id + ", allowed: the id of a task");
    }
    return task;
  }

  private void slide(String where, String id) {
    if (!slides.contains(id)) {
      throw new IllegalArgumentException(where + " has " + id + ", allowed: the id of a slide");
    }
  }
}
