package drumline.shop.check;

import static drumline.shop.check.Findings.mm;

import drumline.shop.contour.BoreStep;
import drumline.shop.contour.OutsideStep;
import drumline.shop.feature.ScrewThread;
import drumline.shop.part.Part;
import drumline.shop.thread.ThreadSize;
import java.util.Optional;

/** A thread's step has the diameter that the thread is made from, and is long enough. */
final class ThreadCheck {

  /** How far a step's nominal diameter may lie outside the standard's limits, mm. */
  private static final double SLACK_MM = 0.1;

  private ThreadCheck() {}

  static void check(Part part, Findings findings) {
    for (ScrewThread thread : part.features(ScrewThread.class)) {
      Optional<OutsideStep> outside = part.findOutside(thread.onElement());
      if (outside.isPresent()) {
        outside(thread, outside.get(), findings);
      } else {
        part.findBore(thread.onElement()).ifPresent(bore -> inside(thread, bore, findings));
      }
    }
  }

  private static void outside(ScrewThread thread, OutsideStep step, Findings findings) {
    ThreadSize size = thread.size();
    length(thread, step.lengthMm(), findings);
    if (size.external().isEmpty()) {
      findings.error("thread-side", thread.id(), size.designation() + " outside", "in a bore");
      return;
    }
    double growthMm = size.taperRatio() * step.lengthMm();
    double lowMm = size.external().get().majorMinMm() - SLACK_MM - growthMm;
    double highMm = size.external().get().majorMaxMm() + SLACK_MM + growthMm;
    diameter(thread, step.startDiameterMm(), lowMm, highMm, size.majorMm(), findings);
  }

  private static void inside(ScrewThread thread, BoreStep step, Findings findings) {
    ThreadSize size = thread.size();
    length(thread, step.lengthMm(), findings);
    if (size.internal().isEmpty()) {
      findings.error("thread-side", thread.id(), size.designation() + " in a bore", "outside");
      return;
    }
    double growthMm = size.taperRatio() * step.lengthMm();
    double lowMm = size.internal().get().minorMinMm() - SLACK_MM - growthMm;
    double highMm = size.internal().get().minorMaxMm() + SLACK_MM + growthMm;
    double usualMm = size.start().tapDrillMm().orElse(size.minorMm());
    diameter(thread, step.startDiameterMm(), lowMm, highMm, usualMm, findings);
  }

  private static void length(ScrewThread thread, double stepMm, Findings findings) {
    if (thread.lengthMm() > stepMm + Profile.ROUNDING_MM) {
      findings.error(
          "thread-too-long",
          thread.id(),
          "a thread of " + mm(thread.lengthMm()) + " on a step of " + mm(stepMm),
          "a thread that fits its step");
    }
  }

  private static void diameter(
      ScrewThread thread,
      double diameterMm,
      double lowMm,
      double highMm,
      double usualMm,
      Findings findings) {
    if (diameterMm < lowMm || diameterMm > highMm) {
      findings.error(
          "thread-diameter",
          thread.id(),
          thread.size().designation() + " on Ø " + mm(diameterMm),
          "a step of Ø " + mm(lowMm) + " to " + mm(highMm),
          "Maybe Ø " + mm(usualMm) + ".");
    }
  }
}
