package drumline.app.keep;

import drumline.shop.problem.Problem;
import drumline.store.Stores;
import drumline.store.api.Store;
import drumline.store.api.StoreCount;
import drumline.store.api.StoreFault;
import drumline.store.api.StoreSettings;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Saves the whole store somewhere else and brings it back. */
public final class KeepStore {
  private final StoreSettings settings;

  private KeepStore(StoreSettings settings) {
    this.settings = settings;
  }

  /** The store in a folder; without one, where the environment says or else the user's own. */
  public static KeepStore in(Optional<Path> folder, Map<String, String> environment, Path home) {
    return new KeepStore(
        folder
            .<StoreSettings>map(StoreSettings.InFolder::new)
            .orElseGet(() -> StoreSettings.usual(environment, home)));
  }

  /** Everything into one new file. */
  public Kept backUp(Path file) {
    return kept(
        store -> {
          store.backUpTo(file);
          return "Backed up to " + file;
        });
  }

  /** Everything as plain files into a new or empty folder. */
  public Kept export(Path folder) {
    return kept(
        store -> {
          store.exportTo(folder);
          return "Exported to " + folder;
        });
  }

  /** Plain files into an empty store. */
  public Kept bringIn(Path folder) {
    return kept(
        store -> {
          store.importFrom(folder);
          return "Imported from " + folder;
        });
  }

  /** A backup in the place of what the store holds, which is kept beside it. */
  public Kept restore(Path file) {
    try {
      Optional<Path> former = Stores.restore(settings, file);
      String tail = former.map(path -> "\nWhat was there before is kept in " + path).orElse("");
      Kept restored = kept(store -> "Restored from " + file);
      return new Kept(restored.text() + tail, restored.problems());
    } catch (StoreFault fault) {
      return new Kept("", fault.problems());
    }
  }

  private Kept kept(Work work) {
    try (Store store = Stores.open(settings)) {
      String done = work.on(store);
      return new Kept(done + ": " + text(store.count()) + ".", List.of());
    } catch (StoreFault fault) {
      return new Kept("", fault.problems());
    }
  }

  private static String text(StoreCount count) {
    return count.inquiryCount()
        + " inquiries, "
        + count.libraryCount()
        + " libraries, "
        + count.revisionCount()
        + " revisions, "
        + count.planCount()
        + " plans, "
        + count.runoffCount()
        + " run-offs, "
        + count.accountCount()
        + " accounts";
  }

  /** What to do with the open store; answers what was done, in words. */
  private interface Work {
    String on(Store store);
  }

  /**
   * What came of it.
   *
   * @param text what was done and how much there is, or empty
   * @param problems why it was not done, or none
   */
  public record Kept(String text, List<Problem> problems) {}
}
