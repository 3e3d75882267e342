package drumline.store.crash;

import drumline.store.Stores;
import drumline.store.api.InquiryShelf;
import drumline.store.api.Store;
import drumline.store.api.StoreSettings;
import java.nio.file.Path;

/** Saves as fast as it can until it is killed, and says what was saved. */
final class SavingProgram {
  private SavingProgram() {}

  /**
   * Runs until it is killed.
   *
   * @param arguments the store's folder; a second one ends the program after as many saves
   */
  public static void main(String[] arguments) throws Exception {
    long saves = arguments.length > 1 ? Long.parseLong(arguments[1]) : Long.MAX_VALUE;
    try (Store store = Stores.open(new StoreSettings.InFolder(Path.of(arguments[0])))) {
      InquiryShelf shelf = store.inquiries();
      if (shelf.findHead(1).isEmpty()) {
        shelf.create("Nipple", text(1), "Ana");
      }
      int head = shelf.head(1).revision();
      for (long save = 0; save < saves; save++) {
        head = shelf.save(1, head, text(head + 1), "Ana", "").revision();
        shelf.summary(1, head, "{\"revision\":" + head + "}");
        System.out.println("saved " + head);
      }
    }
  }

  /** Long enough to fill several pages of the file, and another for each revision. */
  static String text(int revision) {
    return ("revision " + revision + "\n").repeat(50 + revision % 13 * 150);
  }
}
