package drumline.route.parting;

import drumline.route.draft.RouteDraft;
import drumline.shop.contour.OutsideStep;
import drumline.shop.feature.Knurl;
import drumline.shop.feature.ScrewThread;
import drumline.shop.operation.WorkEnd;
import drumline.shop.part.Part;
import drumline.shop.problem.Problem;
import java.util.stream.Stream;

/**
 * Nothing clamps on a finished thread or knurl: says so where the longest cylinder, on which a
 * pick-up spindle would grip the piece for back-working, carries one.
 */
public final class PickUpGrip {
  private PickUpGrip() {}

  /** Notes a warning where it is due; after all operations are written. */
  public static void check(RouteDraft draft) {
    if (draft.where(o -> o.end() == WorkEnd.BACK).isEmpty()) {
      return;
    }
    Part part = draft.inquiry().part();
    part.findLongestCylinder()
        .ifPresent(step -> pressed(part, step).forEach(id -> draft.problem(warning(step, id))));
  }

  private static Stream<String> pressed(Part part, OutsideStep step) {
    return Stream.concat(
        part.features(ScrewThread.class).stream()
            .filter(thread -> thread.onElement().equals(step.id()))
            .map(ScrewThread::id),
        part.features(Knurl.class).stream()
            .filter(knurl -> knurl.onElement().equals(step.id()))
            .map(Knurl::id));
  }

  private static Problem warning(OutsideStep step, String id) {
    return Problem.warning(
        "grip-on-thread",
        id,
        "the pick-up spindle would grip on " + step.id() + ", which carries " + id,
        "a grip on a plain cylinder",
        "Maybe grip on another step with a stepped collet, or with soft jaws over the crests.");
  }
}
