package drumline.planner.identity;

import drumline.planner.model.CutOff;
import drumline.planner.model.EquipmentRules;
import drumline.planner.model.Mode;
import drumline.planner.model.PairRule;
import drumline.planner.model.PickUp;
import drumline.planner.model.Pin;
import drumline.planner.model.PlanningProblem;
import drumline.planner.model.Precedence;
import drumline.planner.model.Slide;
import drumline.planner.model.SpindleCondition;
import drumline.planner.model.SpindleRules;
import drumline.planner.model.Task;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/** Small random problems with every rule in play; the same seed gives the same problem. */
final class SmallProblems {
  private final Random random;
  private final int positionCount;
  private final boolean hasBack;
  private final boolean largest;
  private final List<Slide> slides = new ArrayList<>();
  private final List<Task> tasks = new ArrayList<>();

  private SmallProblems(int seed) {
    random = new Random(seed * 7919L + 13);
    largest = seed % 8 == 7;
    positionCount = 2 + random.nextInt(2);
    hasBack = random.nextBoolean();
  }

  static PlanningProblem of(int seed) {
    return new SmallProblems(seed).problem();
  }

  private PlanningProblem problem() {
    for (int p = 1; p <= positionCount + (hasBack ? 1 : 0); p++) {
      for (int s = 0; s < 1 + random.nextInt(2); s++) {
        slides.add(new Slide("p" + p + "s" + s, p, 2 + random.nextInt(2), random.nextInt(3)));
      }
    }
    int taskCount = 4 + random.nextInt(3) + (largest ? 1 : 0);
    for (int i = 0; i < taskCount; i++) {
      tasks.add(task(i, i == taskCount - 1));
    }
    String cut = "t" + (taskCount - 1);
    boolean hasCut = hasBack || random.nextBoolean();
    List<String> overlapping = random.nextBoolean() ? List.of("t0") : List.of();
    return new PlanningProblem(
        positionCount,
        slides,
        tasks,
        precedences(taskCount),
        pairRules(taskCount),
        spindle(random.nextInt(4) == 0),
        random.nextInt(4),
        hasCut ? Optional.of(new CutOff(cut, random.nextInt(3), overlapping)) : Optional.empty(),
        hasBack ? Optional.of(pickUp()) : Optional.empty(),
        random.nextInt(3) == 0 ? List.of(new Pin.ToMode("t0", 0)) : List.of(),
        equipment());
  }

  /** Now and then one kind of equipment that fewer slides can have than would be used. */
  private EquipmentRules equipment() {
    if (random.nextInt(4) > 0) {
      return EquipmentRules.none();
    }
    List<EquipmentRules.Option> options = new ArrayList<>();
    for (Slide slide : slides) {
      if (random.nextBoolean()) {
        options.add(new EquipmentRules.Option("drive", slide.id(), List.of("t0", "t1", "t2"), 3));
      }
    }
    return new EquipmentRules(options, Map.of("drive", random.nextInt(2)));
  }

  private Task task(int number, boolean last) {
    List<String> slideIds = new ArrayList<>();
    for (Slide slide : slides) {
      boolean fits = last ? slide.position() == positionCount : random.nextInt(3) > 0;
      if (fits) {
        slideIds.add(slide.id());
      }
    }
    if (slideIds.isEmpty()) {
      slideIds.add(slides.get(0).id());
    }
    List<Mode> modes = new ArrayList<>();
    for (int m = 0; m < 1 + random.nextInt(2); m++) {
      modes.add(mode());
    }
    return new Task("t" + number, "task " + number, slideIds, modes);
  }

  private Mode mode() {
    SpindleCondition condition =
        random.nextInt(3) == 0 ? pick(SpindleCondition.values()) : SpindleCondition.TURNING;
    boolean turns =
        condition == SpindleCondition.TURNING || condition == SpindleCondition.EXCLUSIVE_TURNING;
    int speed = turns ? 1000 + 700 * random.nextInt(3) : 0;
    Mode.End end = random.nextInt(5) == 0 ? pick(Mode.End.values()) : Mode.End.EITHER;
    return new Mode(
        condition,
        speed,
        2 + random.nextInt(9),
        200 + 100 * random.nextInt(5),
        100 * random.nextInt(8),
        end,
        condition == SpindleCondition.HELD ? "angle " + random.nextInt(2) : "");
  }

  private <T> T pick(T[] from) {
    return from[random.nextInt(from.length)];
  }

  private List<Precedence> precedences(int taskCount) {
    List<Precedence> list = new ArrayList<>();
    for (int i = 0; i < taskCount; i++) {
      for (int j = i + 1; j < taskCount; j++) {
        if (random.nextInt(5) == 0) {
          int kind = random.nextInt(6);
          Precedence.Sharing sharing =
              kind == 0
                  ? Precedence.Sharing.LATER_POSITION
                  : kind == 1 ? Precedence.Sharing.SAME_SLIDE : Precedence.Sharing.ANY_SLIDE;
          list.add(new Precedence("t" + i, "t" + j, sharing, random.nextInt(3), "order"));
        }
      }
    }
    return list;
  }

  private List<PairRule> pairRules(int taskCount) {
    List<PairRule> list = new ArrayList<>();
    for (int r = 0; r < random.nextInt(3); r++) {
      int first = random.nextInt(taskCount);
      int second = random.nextInt(taskCount);
      if (first != second) {
        PairRule.Kind kind = pick(PairRule.Kind.values());
        list.add(new PairRule(kind, "t" + first, "t" + second, "pair"));
      }
    }
    return list;
  }

  private SpindleRules spindle(boolean common) {
    return new SpindleRules(
        random.nextInt(3) == 0 ? 0 : 300_000,
        random.nextInt(3),
        2500,
        common ? SpindleRules.Drive.COMMON_SPEED : SpindleRules.Drive.INDEPENDENT,
        random.nextBoolean()
            ? SpindleRules.HeldWork.ALONE
            : SpindleRules.HeldWork.SAME_ANGLE_TOGETHER);
  }

  private PickUp pickUp() {
    return new PickUp(
        random.nextInt(3),
        random.nextInt(3),
        random.nextInt(3),
        random.nextInt(3),
        1 + random.nextInt(2),
        spindle(false));
  }
}
