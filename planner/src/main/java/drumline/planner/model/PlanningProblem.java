package drumline.planner.model;

import java.util.List;
import java.util.Optional;

/**
 * A route and a machine in whole numbers: what the planner is asked.
 *
 * @param positionCount positions of the drum, 1 or more
 * @param slides tool slides of the drum and, at position N + 1, beside the pick-up spindle
 * @param tasks operations to be given places
 * @param precedences which task follows which
 * @param pairRules rules for two tasks
 * @param spindle how the drum's spindles change what they do
 * @param indexMs index time, 0 or more
 * @param cutOff the parting task and its bar feed, empty where the last position is like the others
 * @param pickUp the pick-up spindle, empty if there is none
 * @param pins choices fixed by hand
 * @param equipment equipment that can be bought
 */
public record PlanningProblem(
    int positionCount,
    List<Slide> slides,
    List<Task> tasks,
    List<Precedence> precedences,
    List<PairRule> pairRules,
    SpindleRules spindle,
    int indexMs,
    Optional<CutOff> cutOff,
    Optional<PickUp> pickUp,
    List<Pin> pins,
    EquipmentRules equipment) {

  /**
   * Copies the lists and checks that every reference leads somewhere.
   *
   * @throws IllegalArgumentException if a number is out of range, an id is used twice or unknown, a
   *     pick-up spindle has no cut-off, or a back slide has no pick-up spindle
   */
  public PlanningProblem {
    slides = List.copyOf(slides);
    tasks = List.copyOf(tasks);
    precedences = List.copyOf(precedences);
    pairRules = List.copyOf(pairRules);
    pins = List.copyOf(pins);
    ReferenceCheck.check(
        positionCount, slides, tasks, precedences, pairRules, indexMs, cutOff, pickUp, pins);
    ReferenceCheck.equipment(equipment, slides, tasks);
  }

  /** A problem without equipment to buy. */
  public PlanningProblem(
      int positionCount,
      List<Slide> slides,
      List<Task> tasks,
      List<Precedence> precedences,
      List<PairRule> pairRules,
      SpindleRules spindle,
      int indexMs,
      Optional<CutOff> cutOff,
      Optional<PickUp> pickUp,
      List<Pin> pins) {
    this(
        positionCount,
        slides,
        tasks,
        precedences,
        pairRules,
        spindle,
        indexMs,
        cutOff,
        pickUp,
        pins,
        EquipmentRules.none());
  }

  /** A problem with slides and tasks only: no order, instant spindles, no index time. */
  public static PlanningProblem of(int positionCount, List<Slide> slides, List<Task> tasks) {
    return new PlanningProblem(
        positionCount,
        slides,
        tasks,
        List.of(),
        List.of(),
        SpindleRules.instant(),
        0,
        Optional.empty(),
        Optional.empty(),
        List.of());
  }

  /** Position number of the back-working slides. */
  public int backPosition() {
    return positionCount + 1;
  }

  /** The same with other tasks. */
  public PlanningProblem withTasks(List<Task> newTasks) {
    return new PlanningProblem(
        positionCount,
        slides,
        newTasks,
        precedences,
        pairRules,
        spindle,
        indexMs,
        cutOff,
        pickUp,
        pins,
        equipment);
  }

  /** The same with other slides. */
  public PlanningProblem withSlides(List<Slide> newSlides) {
    return new PlanningProblem(
        positionCount,
        newSlides,
        tasks,
        precedences,
        pairRules,
        spindle,
        indexMs,
        cutOff,
        pickUp,
        pins,
        equipment);
  }

  /** The same with another order of tasks. */
  public PlanningProblem withPrecedences(List<Precedence> newPrecedences) {
    return new PlanningProblem(
        positionCount,
        slides,
        tasks,
        newPrecedences,
        pairRules,
        spindle,
        indexMs,
        cutOff,
        pickUp,
        pins,
        equipment);
  }

  /** The same with other rules for pairs. */
  public PlanningProblem withPairRules(List<PairRule> newPairRules) {
    return new PlanningProblem(
        positionCount,
        slides,
        tasks,
        precedences,
        newPairRules,
        spindle,
        indexMs,
        cutOff,
        pickUp,
        pins,
        equipment);
  }

  /** The same with other spindles. */
  public PlanningProblem withSpindle(SpindleRules newSpindle) {
    return new PlanningProblem(
        positionCount,
        slides,
        tasks,
        precedences,
        pairRules,
        newSpindle,
        indexMs,
        cutOff,
        pickUp,
        pins,
        equipment);
  }

  /** The same with another index time. */
  public PlanningProblem withIndexMs(int newIndexMs) {
    return new PlanningProblem(
        positionCount,
        slides,
        tasks,
        precedences,
        pairRules,
        spindle,
        newIndexMs,
        cutOff,
        pickUp,
        pins,
        equipment);
  }

  /** The same with another cut-off and pick-up. */
  public PlanningProblem withEnd(Optional<CutOff> newCutOff, Optional<PickUp> newPickUp) {
    return new PlanningProblem(
        positionCount,
        slides,
        tasks,
        precedences,
        pairRules,
        spindle,
        indexMs,
        newCutOff,
        newPickUp,
        pins,
        equipment);
  }

  /** The same with other pins. */
  public PlanningProblem withPins(List<Pin> newPins) {
    return new PlanningProblem(
        positionCount,
        slides,
        tasks,
        precedences,
        pairRules,
        spindle,
        indexMs,
        cutOff,
        pickUp,
        newPins,
        equipment);
  }

  /** The same with other equipment to buy. */
  public PlanningProblem withEquipment(EquipmentRules newEquipment) {
    return new PlanningProblem(
        positionCount,
        slides,
        tasks,
        precedences,
        pairRules,
        spindle,
        indexMs,
        cutOff,
        pickUp,
        pins,
        newEquipment);
  }
}
