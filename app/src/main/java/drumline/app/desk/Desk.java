package drumline.app.desk;

import drumline.app.answer.DeskRefusal;
import drumline.app.ask.OpenInquiry;
import drumline.app.job.JobAnswer;
import drumline.app.job.JobBoard;
import drumline.app.job.JobWish;
import drumline.app.shelf.Change;
import drumline.app.shelf.DeskSettings;
import drumline.app.shelf.KeptPlans;
import drumline.app.shelf.LayoutCases;
import drumline.app.shelf.Shelves;
import drumline.drawing.svg.DrawingStyle;
import drumline.sheets.content.Cautions;
import drumline.store.Stores;
import drumline.store.api.Store;
import drumline.store.api.StoreFault;
import drumline.store.api.StoreSettings;
import java.time.Clock;
import java.util.List;
import java.util.function.Consumer;

/** Everything that the workbench asks. Many threads may ask at the same time. */
public final class Desk implements AutoCloseable {
  private static final double DEMO_S = 10;
  private static final List<String> DEMOS =
      List.of("sleeve.yaml", "hex-coupling.yaml", "valve-seat-body.yaml");

  private final Store store;
  private final DeskSettings settings;
  private final Shelves shelves;
  private final JobBoard jobs;
  private final InquiryFolder inquiries;
  private final LayoutFolder layouts;
  private final Leaves leaves;
  private final Papers papers;
  private final Comparisons comparisons;
  private final LibraryLists libraries;

  private Desk(Store store, DeskSettings settings) {
    this.store = store;
    this.settings = settings;
    this.shelves = new Shelves(store, settings);
    LayoutCases cases = new LayoutCases(shelves);
    KeptPlans plans = new KeptPlans(shelves);
    this.jobs =
        new JobBoard(
            new PlanningDesk(shelves, plans), settings.mostParallelJobsCount(), Clock.systemUTC());
    HeadLines heads = new HeadLines(shelves, cases, jobs::findOpen);
    this.inquiries = new InquiryFolder(shelves, heads);
    this.layouts = new LayoutFolder(shelves, cases, heads, inquiries, plans);
    this.leaves = new Leaves(shelves, cases);
    this.papers = new Papers(shelves, cases);
    this.comparisons = new Comparisons(shelves, cases, plans);
    this.libraries = new LibraryLists(shelves);
  }

  /**
   * Opens a desk on its folder.
   *
   * @throws DeskRefusal if the folder's store cannot be opened; it says why
   */
  public static Desk open(DeskSettings settings) {
    try {
      return new Desk(Stores.open(new StoreSettings.InFolder(settings.folder())), settings);
    } catch (StoreFault e) {
      throw DeskRefusal.of(DeskRefusal.Kind.REFUSED, String.valueOf(e.getMessage()));
    }
  }

  /** Puts the worked examples on an empty desk and has them planned in the background. */
  public void layOutExamples() {
    if (!inquiries.isEmpty()) {
      return;
    }
    for (String name : DEMOS) {
      NewInquiry wish = new NewInquiry("text", null, null, OpenInquiry.exampleText(name), null);
      inquiries.create(wish);
    }
    // the one that heads the list is planned first
    List<String> ids = inquiries.list("", false).stream().map(line -> line.id()).toList();
    ids.forEach(id -> jobs.plan(new JobWish(id, List.of(), DEMO_S, 1)));
  }

  /** The inquiries. */
  public InquiryFolder inquiries() {
    return inquiries;
  }

  /** Their layouts. */
  public LayoutFolder layouts() {
    return layouts;
  }

  /** Their leaves. */
  public Leaves leaves() {
    return leaves;
  }

  /** Their sheets. */
  public Papers papers() {
    return papers;
  }

  /** Stored layouts side by side. */
  public Comparisons comparisons() {
    return comparisons;
  }

  /** What can be chosen from. */
  public LibraryLists libraries() {
    return libraries;
  }

  /** Planning jobs. */
  public JobBoard jobs() {
    return jobs;
  }

  /** Puts a planning job into the queue, if the inquiry is there and can be planned. */
  public JobAnswer plan(JobWish wish) {
    Shelves.State state = shelves.state(wish.inquiryId());
    if (state.read().findInquiry().isEmpty()) {
      throw DeskRefusal.of(
          "The text has errors; nothing can be planned.",
          state.read().places().of(state.read().opened().problems()));
    }
    return jobs.plan(wish);
  }

  /** Tells of every change of an inquiry until what is given back is run. */
  public Runnable watch(Consumer<Change> watcher) {
    return shelves.watch(watcher);
  }

  /** How it is set up. */
  public DeskSettings settings() {
    return settings;
  }

  /** Where everything is kept, for people. */
  public String place() {
    return store.place();
  }

  /** The caution that stands on every page. */
  public static String caution() {
    return Cautions.GENERAL;
  }

  /** The style of all drawings, for the page that shows them. */
  public static String drawingStyle() {
    return DrawingStyle.css();
  }

  /** The caution at the foot of every page. */
  public static String foot() {
    return Cautions.FOOT;
  }

  /** Ends the jobs, keeps what they found, and closes the store. */
  @Override
  public void close() {
    jobs.close();
    store.close();
  }
}
