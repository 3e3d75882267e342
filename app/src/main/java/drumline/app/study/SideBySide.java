package drumline.app.study;

import drumline.app.divide.DividedRoute;
import drumline.planner.api.Cancel;
import drumline.planner.api.PlannerSettings;
import drumline.planner.api.ProgressListener;
import drumline.planner.bound.CycleBound;
import drumline.planner.tables.ProblemTables;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.machine.DoubleIndexing;
import drumline.shop.machine.Machine;
import drumline.shop.machine.MachineCost;
import drumline.shop.problem.Problem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/**
 * One inquiry on several machines, each with single and, where its drum can, with double indexing.
 * With a choice of all machines, those whose cheapest possible piece costs more than one already
 * found are not planned.
 */
public final class SideBySide {
  private final Inquiry inquiry;
  private final PlannerSettings settings;
  private final Function<Machine, ProgressListener> listener;
  private final Cancel cancel;

  /**
   * Plans for an inquiry.
   *
   * @param listener who is told of the search on a machine
   */
  public SideBySide(
      Inquiry inquiry,
      PlannerSettings settings,
      Function<Machine, ProgressListener> listener,
      Cancel cancel) {
    this.inquiry = inquiry;
    this.settings = settings;
    this.listener = listener;
    this.cancel = cancel;
  }

  /** A machine with what a good piece costs on it at least. */
  private record Candidate(Machine machine, double boundS, double leastPerPiece) {}

  /** A study for each machine and way of indexing, in the order given. */
  public List<MachineStudy> planAll(List<Machine> machines) {
    return both(machines).stream().map(this::plan).toList();
  }

  /** The same, without planning machines that cannot be the cheapest. */
  public List<MachineStudy> planPromising(List<Machine> machines) {
    List<Candidate> candidates = new ArrayList<>(both(machines).stream().map(this::rated).toList());
    candidates.sort(Comparator.comparingDouble(Candidate::leastPerPiece));
    List<MachineStudy> studies = new ArrayList<>();
    double bestCost = Double.POSITIVE_INFINITY;
    String bestName = "";
    for (Candidate candidate : candidates) {
      if (candidate.leastPerPiece() > bestCost) {
        studies.add(cutShort(candidate, bestName, bestCost));
        continue;
      }
      MachineStudy study = plan(candidate.machine());
      studies.add(study);
      double cost =
          study
              .plan()
              .map(plan -> plan.money().cost().total().doubleValue())
              .orElse(Double.POSITIVE_INFINITY);
      if (cost < bestCost) {
        bestCost = cost;
        bestName = candidate.machine().name();
      }
    }
    return studies;
  }

  private static List<Machine> both(List<Machine> machines) {
    List<Machine> all = new ArrayList<>();
    for (Machine machine : machines) {
      all.add(machine);
      DoubleIndexing.of(machine).ifPresent(all::add);
    }
    return all;
  }

  private MachineStudy plan(Machine machine) {
    return StudyRun.study(inquiry, machine, settings, listener.apply(machine), cancel);
  }

  /** Machine and labour for one piece at the shortest cycle that the bound leaves. */
  private Candidate rated(Machine machine) {
    DividedRoute divided = DividedRoute.of(inquiry, machine);
    if (divided.isWrong()) {
      return new Candidate(machine, 0, 0);
    }
    double boundS =
        DividedRoute.translate(inquiry, machine, divided.route())
            .translation()
            .map(t -> CycleBound.of(new ProblemTables(t.problem())).cycleMs() / 1000.0)
            .orElse(0.0);
    MachineCost cost = machine.cost();
    double hour =
        inquiry.rates().convert(cost.hourRate(), cost.currency()).doubleValue()
            + inquiry.rates().labourPerHour().doubleValue() / cost.machinesPerOperatorCount();
    int pieces = machine.indexing().piecesPerIndexCount();
    return new Candidate(machine, boundS, hour * boundS / 3600 / pieces);
  }

  private MachineStudy cutShort(Candidate candidate, String bestName, double bestCost) {
    Machine machine = candidate.machine();
    DividedRoute divided = DividedRoute.of(inquiry, machine);
    Problem problem =
        Problem.warning(
            "cut-short",
            machine.name(),
            String.format(
                Locale.ROOT,
                "not planned: machine and labour alone cost %.3f a piece at the shortest possible"
                    + " cycle of %.2f s",
                candidate.leastPerPiece(),
                candidate.boundS()),
            String.format(Locale.ROOT, "less than the %.3f found on %s", bestCost, bestName),
            "Maybe plan on it alone to see its layout.");
    return MachineStudy.unplanned(inquiry, machine, divided.route(), List.of(problem));
  }
}
