package drumline.route.finish;

import drumline.route.draft.RouteDraft;
import drumline.shop.contour.OutsideStep;
import drumline.shop.feature.Groove;
import drumline.shop.feature.ScrewThread;
import drumline.shop.part.Part;
import drumline.shop.problem.Problem;
import drumline.shop.standard.ThreadRelief;
import drumline.shop.thread.ThreadSystem;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Rule {@code thread-relief}: an outside metric thread that ends at a shoulder needs a relief
 * groove, or a plain stretch for the tool to run out.
 *
 * <p>Source: [DIN-76-1] 2004: grooves as {@link ThreadRelief}; run-out of 2.5 pitches from memory.
 */
public final class ThreadRoom {
  private static final double RUN_OUT_PITCHES = 2.5;
  private static final double NEAR_MM = 0.6;

  private ThreadRoom() {}

  /** Notes a warning where a thread has no room. */
  public static void check(RouteDraft draft) {
    if (!draft.uses("thread-relief")) {
      return;
    }
    Part part = draft.inquiry().part();
    for (ScrewThread thread : part.features(ScrewThread.class)) {
      part.findOutside(thread.onElement())
          .filter(step -> thread.size().system() == ThreadSystem.METRIC)
          .filter(step -> shoulder(part, step))
          .flatMap(step -> fault(part, thread, step))
          .ifPresent(draft::problem);
    }
  }

  /** Whether a larger diameter follows behind the step. */
  private static boolean shoulder(Part part, OutsideStep step) {
    return part.outside().stream()
        .filter(next -> Math.abs(next.fromZMm() - step.toZMm()) < 1e-6)
        .anyMatch(next -> next.startDiameterMm() > step.endDiameterMm() + 1e-6);
  }

  private static Optional<Problem> fault(Part part, ScrewThread thread, OutsideStep step) {
    double pitch = thread.size().pitchMm();
    double plain = step.lengthMm() - thread.lengthMm();
    Optional<ThreadRelief> usual =
        ThreadRelief.findExternal(thread.size().majorMm(), pitch, ThreadRelief.Room.REGULAR);
    Optional<ThreadRelief> narrow =
        ThreadRelief.findExternal(thread.size().majorMm(), pitch, ThreadRelief.Room.SHORT);
    List<Groove> grooves =
        part.features(Groove.class).stream()
            .filter(g -> g.place() == Groove.Place.OUTSIDE)
            .filter(g -> Math.abs(g.atMm() + g.widthMm() - step.toZMm()) < NEAR_MM)
            .toList();
    if (grooves.isEmpty()) {
      return plain >= RUN_OUT_PITCHES * pitch - 1e-6
          ? Optional.empty()
          : Optional.of(problem(thread, text("%.2f mm to the shoulder", plain), usual, pitch));
    }
    Groove groove = grooves.get(0);
    boolean wide = narrow.isEmpty() || groove.widthMm() >= narrow.get().widthMinMm() - 1e-6;
    boolean deep =
        usual.isEmpty() || groove.bottomDiameterMm() <= usual.get().diameterMm() + NEAR_MM / 2;
    return wide && deep
        ? Optional.empty()
        : Optional.of(
            problem(
                thread,
                text("a groove %.2f wide to Ø%.2f mm", groove.widthMm(), groove.bottomDiameterMm()),
                usual,
                pitch));
  }

  private static Problem problem(
      ScrewThread thread, String found, Optional<ThreadRelief> usual, double pitchMm) {
    String groove =
        usual
            .map(
                r ->
                    text(
                        "a groove of DIN 76 form %s, Ø%.2f and %.2f to %.2f mm wide, or ",
                        r.form(), r.diameterMm(), r.widthMinMm(), r.widthMaxMm()))
            .orElse("");
    return Problem.warning(
        "thread-relief",
        thread.id(),
        thread.size().designation() + " has " + found,
        groove + text("%.2f mm of run-out", RUN_OUT_PITCHES * pitchMm),
        "Maybe ask for a relief groove, or for a shorter thread.");
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
