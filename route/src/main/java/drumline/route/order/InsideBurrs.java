package drumline.route.order;

import drumline.route.draft.RouteDraft;
import drumline.shop.feature.CrossHole;
import drumline.shop.feature.Deburring;
import drumline.shop.feature.ScrewThread;
import drumline.shop.part.Part;
import drumline.shop.problem.Problem;
import java.util.Set;

/**
 * Rule {@code burr-inside}: a cross hole that breaks into a thread in a bore leaves a burr in it
 * that no later cut takes away.
 */
public final class InsideBurrs {
  private InsideBurrs() {}

  /** Notes a warning for each cross hole without deburring. */
  public static void check(RouteDraft draft) {
    if (!draft.uses("burr-inside")) {
      return;
    }
    Part part = draft.inquiry().part();
    Hosts hosts = new Hosts(part);
    for (CrossHole hole : part.features(CrossHole.class)) {
      boolean clean =
          part.features(Deburring.class).stream().anyMatch(d -> d.ofFeature().equals(hole.id()));
      Set<String> bores = hosts.boresAtZ(hole.zMm());
      part.features(ScrewThread.class).stream()
          .filter(thread -> !clean && bores.contains(thread.onElement()))
          .forEach(thread -> draft.problem(problem(hole, thread)));
    }
  }

  private static Problem problem(CrossHole hole, ScrewThread thread) {
    return Problem.warning(
        "burr-inside",
        hole.id(),
        "the hole breaks into " + thread.id() + " and leaves a burr in it",
        "deburring after it, or a hole clear of the thread",
        "Maybe ask for deburring of " + hole.id() + ", or chase the thread afterwards.");
  }
}
