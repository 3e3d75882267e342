package drumline.planner.cpsat;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverSolutionCallback;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.SatParameters;
import drumline.planner.model.Layout;
import java.util.function.Function;
import java.util.function.ToLongFunction;

/** Runs the solver under a watch: the same effort gives the same search. */
final class SolverRun {
  private static final long POLL_MS = 20;

  private SolverRun() {}

  static void configure(CpSolver solver, SolverEffort effort) {
    SatParameters.Builder parameters = solver.getParameters();
    parameters.setNumWorkers(effort.workerCount());
    parameters.setInterleaveSearch(true);
    parameters.setRandomSeed(effort.seed());
    parameters.setMaxDeterministicTime(effort.workS());
    parameters.setMaxTimeInSeconds(effort.wallS());
  }

  static CpSolverStatus solve(
      CpSolver solver,
      CpModel model,
      Watch watch,
      Function<ToLongFunction<LinearArgument>, Layout> read) {
    String invalid = model.validate();
    if (!invalid.isEmpty()) {
      throw new IllegalStateException("the solver's model is not valid: " + invalid);
    }
    Thread stopper = new Thread(() -> stopWhenCancelled(solver, watch), "planner-watch");
    stopper.setDaemon(true);
    stopper.start();
    try {
      return solver.solve(model, new Found(watch, read));
    } finally {
      stopper.interrupt();
    }
  }

  private static void stopWhenCancelled(CpSolver solver, Watch watch) {
    try {
      while (true) {
        if (watch.isCancelled()) {
          solver.stopSearch();
        }
        Thread.sleep(POLL_MS);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /**
   * The library's own callback for bounds is not used: it crashes the Java process now and then.
   */
  private static final class Found extends CpSolverSolutionCallback {
    private final Watch watch;
    private final Function<ToLongFunction<LinearArgument>, Layout> read;

    Found(Watch watch, Function<ToLongFunction<LinearArgument>, Layout> read) {
      this.watch = watch;
      this.read = read;
    }

    @Override
    public void onSolutionCallback() {
      watch.layout(read.apply(this::value));
      watch.bound((int) Math.ceil(bestObjectiveBound() - 1e-6));
    }
  }
}
