package drumline.app.shelf;

import drumline.app.answer.DeskRefusal;
import drumline.app.ask.Opened;
import drumline.intake.InquiryReader;
import drumline.intake.form.Reading;
import drumline.intake.library.Libraries;
import drumline.intake.library.LibraryPaths;
import drumline.shop.material.Material;
import drumline.store.api.InquiryShelf;
import drumline.store.api.StaleRevisionException;
import drumline.store.api.Store;
import drumline.store.entry.InquiryEntry;
import drumline.store.entry.Revision;
import drumline.store.entry.RevisionEntry;
import drumline.store.entry.Standing;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

/** The store as the desk uses it: inquiries by their address words, texts read. */
public final class Shelves {
  private static final int KEPT_TEXTS = 64;

  private final Store store;
  private final DeskSettings settings;
  private final Lately<String, ReadText> texts = new Lately<>(KEPT_TEXTS);
  private final List<Consumer<Change>> watchers = new CopyOnWriteArrayList<>();

  public Shelves(Store store, DeskSettings settings) {
    this.store = store;
    this.settings = settings;
  }

  /**
   * An inquiry as it stands.
   *
   * @param entry its line in the store
   * @param kept its text and layout
   * @param read the text, read
   */
  public record State(InquiryEntry entry, KeptText kept, ReadText read) {
    /** Its address word. */
    public String id() {
      return String.valueOf(entry.id());
    }

    /** Its present revision. */
    public int revision() {
      return entry.head().revision();
    }

    /** Its title, else the name it was created with. */
    public String name() {
      return read.head("title").orElse(entry.name());
    }

    /** Whether it is put away. */
    public boolean isArchived() {
      return entry.standing() == Standing.ARCHIVED;
    }
  }

  /** A change that needs the revision which it was made on. */
  public interface Changing {
    Optional<Revision> on(InquiryShelf shelf, long id) throws StaleRevisionException;
  }

  public Store store() {
    return store;
  }

  public String user() {
    return settings.user();
  }

  public ReadText read(String text) {
    return texts.get(text, this::readNow);
  }

  /** The library's materials, the user's own over the shipped ones. */
  public List<Material> materials() {
    return Libraries.read(new Reading(), own()).materials();
  }

  private LibraryPaths own() {
    Path folder = settings.libraryFolder();
    return folder == null ? LibraryPaths.none() : LibraryPaths.ofFolder(folder);
  }

  private ReadText readNow(String text) {
    Path folder = settings.libraryFolder();
    Path base = folder == null ? settings.folder() : folder;
    return new ReadText(text, new Opened(InquiryReader.readText(text, "inquiry", base, own())));
  }

  public State state(String id) {
    long number = number(id);
    return state(store.inquiries().findEntry(number).orElseThrow(() -> missing(id)));
  }

  /** An inquiry that must not have been changed since. */
  public State state(String id, int expectedRevision) {
    State state = state(id);
    if (state.revision() != expectedRevision) {
      throw DeskRefusal.stale(expectedRevision, present(state.entry().head()));
    }
    return state;
  }

  private static DeskRefusal.Present present(RevisionEntry entry) {
    return new DeskRefusal.Present(entry.revision(), entry.who(), entry.when().toString());
  }

  public State state(InquiryEntry entry) {
    KeptText kept =
        KeptText.of(store.inquiries().revision(entry.id(), entry.head().revision()).text());
    return new State(entry, kept, read(kept.text()));
  }

  /** Does a change and says so to whoever watches; empty where there was nothing to change. */
  public Optional<State> change(String id, int expectedRevision, Changing changing) {
    long number = number(id);
    if (store.inquiries().findEntry(number).isEmpty()) {
      throw missing(id);
    }
    try {
      return changing.on(store.inquiries(), number).map(revision -> changed(id));
    } catch (StaleRevisionException e) {
      throw DeskRefusal.stale(expectedRevision, present(e.present()));
    }
  }

  private State changed(String id) {
    State state = state(id);
    tell(state);
    return state;
  }

  public void tell(State state) {
    Change change =
        new Change(
            state.id(),
            state.revision(),
            state.entry().head().who(),
            state.entry().head().when().toString());
    watchers.forEach(watcher -> watcher.accept(change));
  }

  /** Tells of every change until what is given back is run. */
  public Runnable watch(Consumer<Change> watcher) {
    watchers.add(watcher);
    return () -> watchers.remove(watcher);
  }

  public static long number(String id) {
    try {
      return Long.parseLong(id);
    } catch (NumberFormatException e) {
      throw missing(id);
    }
  }

  public static DeskRefusal missing(String id) {
    return DeskRefusal.of(DeskRefusal.Kind.MISSING, "There is no inquiry " + id + ".");
  }
}
