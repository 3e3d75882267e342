package drumline.app.desk;

import drumline.app.answer.DeskRefusal;
import drumline.app.answer.PlacedProblem;
import drumline.app.ask.PlanInquiry;
import drumline.app.ask.SearchWatch;
import drumline.app.job.JobResult;
import drumline.app.job.JobWish;
import drumline.app.job.PlanningWork;
import drumline.app.layout.FittedRoute;
import drumline.app.layout.KeptLayout;
import drumline.app.layout.LaidOut;
import drumline.app.layout.RedividedRoute;
import drumline.app.shelf.KeptPlans;
import drumline.app.shelf.Shelves;
import drumline.app.study.MachineStudy;
import drumline.app.study.PlannedLayout;
import drumline.shop.operation.Route;
import drumline.shop.problem.Problem;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Plans an inquiry in the background and keeps what was found. */
final class PlanningDesk implements PlanningWork {
  private static final int MOST_TRIES = 20;

  private final Shelves shelves;
  private final KeptPlans plans;

  PlanningDesk(Shelves shelves, KeptPlans plans) {
    this.shelves = shelves;
    this.plans = plans;
  }

  @Override
  public JobResult plan(JobWish wish, SearchWatch watch) {
    Shelves.State state = shelves.state(wish.inquiryId());
    if (state.read().findInquiry().isEmpty()) {
      throw DeskRefusal.of(
          "The text has errors.", state.read().places().of(state.read().opened().problems()));
    }
    PlanInquiry plan =
        PlanInquiry.plan(
            state.read().opened(), wish.machines(), wish.seconds(), wish.seed(), watch);
    Map<MachineStudy, String> kept = new HashMap<>();
    List<String> ids = new ArrayList<>();
    List<Problem> problems = new ArrayList<>(plan.problems());
    for (MachineStudy study : plan.studies()) {
      problems.addAll(study.problems());
      if (study.isFeasible()) {
        String id = String.valueOf(keep(state, study, wish));
        kept.put(study, id);
        ids.add(id);
      }
    }
    Optional<MachineStudy> best = plan.findBest();
    Optional<String> bestId = best.map(study -> kept.getOrDefault(study, ""));
    best.ifPresent(study -> present(state.id(), study, bestId.orElseThrow()));
    List<PlacedProblem> placed = state.read().places().of(problems);
    return new JobResult(ids, bestId, words(best), placed);
  }

  private static String words(Optional<MachineStudy> best) {
    return best.map(
            study ->
                String.format(
                    Locale.ROOT,
                    "planned on %s: a cycle of %.2f s",
                    study.machine().name(),
                    study.plan().orElseThrow().timeline().cycleS()))
        .orElse("no layout was found");
  }

  private long keep(Shelves.State state, MachineStudy study, JobWish wish) {
    PlannedLayout plan = study.plan().orElseThrow();
    Route derived = FittedRoute.of(study.inquiry(), study.machine());
    KeptLayout layout =
        new KeptLayout(
            KeptLayout.Origin.PLANNED,
            plan.layout(),
            RedividedRoute.parts(study.route(), derived),
            state.kept().text(),
            plan.lowerBoundS(),
            plan.isProvenOptimal(),
            plan.planningWallMs(),
            plan.notes());
    LaidOut laid =
        new LaidOut(
            plan.layout(),
            plan.timeline(),
            plan.audit(),
            plan.states(),
            Optional.of(plan.money()),
            "");
    return plans.keep(state, layout, laid, wish.seconds(), wish.seed());
  }

  /** Makes it the present layout of whatever the inquiry's text is by now. */
  private void present(String id, MachineStudy study, String layoutId) {
    String note =
        String.format(
            Locale.ROOT,
            "planned on %s: %.2f s",
            study.machine().name(),
            study.plan().orElseThrow().timeline().cycleS());
    for (int i = 0; ; i++) {
      try {
        plans.use(shelves.state(id), Long.parseLong(layoutId), note);
        return;
      } catch (DeskRefusal e) {
        if (e.kind() != DeskRefusal.Kind.STALE || i >= MOST_TRIES) {
          throw e;
        }
      }
    }
  }
}
