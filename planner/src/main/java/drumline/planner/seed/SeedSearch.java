package drumline.planner.seed;

import drumline.planner.bound.CycleBound;
import drumline.planner.model.Layout;
import drumline.planner.tables.ProblemTables;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** Finds a good layout fast; the same seed gives the same layout. */
public final class SeedSearch {
  private final ProblemTables tables;
  private final int boundMs;
  private final SplittableRandom random;
  private Optional<Layout> best = Optional.empty();

  /** A search on a problem whose order rules form no circle. */
  public SeedSearch(ProblemTables tables, int seed) {
    this.tables = tables;
    random = new SplittableRandom(seed);
    boundMs = CycleBound.of(tables).cycleMs();
  }

  /**
   * Searches.
   *
   * @param stepCount small changes to try, in all
   * @param found told of each better layout
   * @param stop asked now and then whether to end
   */
  public Optional<Layout> search(int stepCount, Consumer<Layout> found, BooleanSupplier stop) {
    if (!tables.isCommonSpeed()) {
      run(new ModeFilter(tables), stepCount, found, stop);
      return best;
    }
    int[] speeds = ModeFilter.speeds(tables);
    for (int speed : speeds) {
      ModeFilter filter = new ModeFilter(tables, speed);
      if (filter.isComplete()) {
        run(filter, stepCount / speeds.length, found, stop);
      }
    }
    if (speeds.length == 0) {
      run(new ModeFilter(tables), stepCount, found, stop);
    }
    return best;
  }

  private void run(ModeFilter filter, int stepCount, Consumer<Layout> found, BooleanSupplier stop) {
    if (!filter.isComplete()) {
      return;
    }
    int restarts = 4;
    for (int round = 0; round < restarts; round++) {
      LayoutState state = new LayoutState(tables);
      RegretInsertion.fill(state, filter, boundMs * (1.05 + 0.1 * round));
      Annealing annealing = new Annealing(state, filter, boundMs, random.split());
      annealing.note(layout -> offer(layout, found));
      annealing.run(stepCount / restarts, boundMs * 0.04 + 1, layout -> offer(layout, found), stop);
    }
  }

  private void offer(Layout layout, Consumer<Layout> found) {
    if (best.isEmpty() || layout.cycleMs() < best.orElseThrow().cycleMs()) {
      best = Optional.of(layout);
      found.accept(layout);
    }
  }
}
