package drumline.intake.size;

import drumline.intake.form.Field;
import drumline.shop.thread.ThreadCatalogue;
import drumline.shop.thread.ThreadSize;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads a thread by its designation, such as {@code M20x1.5-6g} or {@code 1/4-18 NPT}. */
public final class ThreadField {

  private ThreadField() {}

  /** The thread; a problem with the nearest designations where there is none of that name. */
  public static Optional<ThreadSize> read(Field field) {
    Optional<ThreadSize> found = ThreadCatalogue.find(field.text());
    if (found.isEmpty()) {
      field.reading().add(ThreadCatalogue.explain(field.text(), field.where()));
    }
    return found;
  }

  /** The drill before a tap; a problem where the thread is outside only. */
  public static double tappingDrillMm(Field field, ThreadSize thread) {
    OptionalDouble drill = thread.start().tapDrillMm();
    if (drill.isEmpty()) {
      field.report(
          "thread-not-inside",
          field.node().words() + ", an outside thread",
          "a thread that is cut in holes",
          "");
    }
    return drill.orElse(Double.NaN);
  }
}
