package drumline.planner.seed;

import drumline.planner.model.Layout;
import drumline.planner.tables.ProblemTables;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * Local search that moves, swaps and re-speeds tasks, and now and then accepts a worse layout; the
 * less likely, the longer it runs.
 */
final class Annealing {
  private static final double BROKEN_COST = 0.5;
  private final LayoutState state;
  private final Moves moves;
  private final SplittableRandom random;
  private final int boundMs;
  private int targetMs;
  private Optional<Layout> best = Optional.empty();

  Annealing(LayoutState state, ModeFilter filter, int boundMs, SplittableRandom random) {
    this.state = state;
    this.random = random;
    this.boundMs = boundMs;
    moves = new Moves(state, filter, random);
    targetMs = Integer.MAX_VALUE;
  }

  /** Best layout found that breaks no rule. */
  Optional<Layout> best() {
    return best;
  }

  /** Takes the present state as the best if it breaks nothing and is shorter. */
  void note(Consumer<Layout> found) {
    int cycle = state.cycleMs();
    if (cycle <= targetMs && brokenTotal() == 0) {
      Layout layout = state.layout();
      best = Optional.of(layout);
      targetMs = layout.cycleMs() - 1;
      found.accept(layout);
    }
  }

  private int brokenTotal() {
    int broken = 0;
    for (int i = 0; i < state.tables.taskCount; i++) {
      broken += state.rules.brokenAt(state, i);
    }
    return broken;
  }

  /** Runs a number of steps from warm to cold. */
  void run(int stepCount, double warmMs, Consumer<Layout> found, BooleanSupplier stop) {
    double coldMs = warmMs / 60;
    for (int step = 0; step < stepCount; step++) {
      if ((step & 1023) == 0 && stop.getAsBoolean()) {
        return;
      }
      if (best.isPresent() && targetMs < boundMs) {
        return;
      }
      double heatMs = warmMs * Math.pow(coldMs / warmMs, step / (double) stepCount);
      if (moves.propose()) {
        double change = change(Math.max(warmMs * 50, 1));
        if (change <= 0 || random.nextDouble() < Math.exp(-change / heatMs)) {
          note(found);
        } else {
          moves.undo();
        }
      }
    }
  }

  private double change(double warm50Ms) {
    double aim = targetMs == Integer.MAX_VALUE ? boundMs : targetMs;
    double change = BROKEN_COST * warm50Ms * (moves.brokenAfter() - moves.brokenBefore());
    ProblemTables tables = state.tables;
    for (int k = 0; k < tables.stageCount; k++) {
      change += Math.max(0, state.needMs[k] - aim) - Math.max(0, moves.needBefore()[k] - aim);
    }
    return change;
  }
}
