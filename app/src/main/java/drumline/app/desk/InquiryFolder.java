package drumline.app.desk;

import drumline.app.answer.DeskRefusal;
import drumline.app.answer.HeadAnswer;
import drumline.app.answer.InquiryText;
import drumline.app.answer.ListedInquiry;
import drumline.app.answer.RevisionLine;
import drumline.app.answer.RevisionText;
import drumline.app.ask.ImportStep;
import drumline.app.shelf.KeptText;
import drumline.app.shelf.Shelves;
import drumline.intake.edit.RefusedEditException;
import drumline.intake.edit.TextEdit;
import drumline.intake.edit.TextEdits;
import drumline.shop.problem.Problem;
import drumline.store.entry.InquiryFilter;
import drumline.store.entry.Revision;
import drumline.store.entry.RevisionEntry;
import drumline.store.entry.Standing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;

/** The inquiries: listed, begun, changed, put away. */
public final class InquiryFolder {
  private final Shelves shelves;
  private final HeadLines heads;

  InquiryFolder(Shelves shelves, HeadLines heads) {
    this.shelves = shelves;
    this.heads = heads;
  }

  /** The inquiries in which all words occur, last changed first. */
  List<ListedInquiry> list(String words, Standing standing) {
    return shelves.store().inquiries().list(new InquiryFilter(words, standing)).stream()
        .map(heads::listed)
        .toList();
  }

  /** The open ones, or those put away. */
  public List<ListedInquiry> list(String words, boolean isArchived) {
    return list(words, isArchived ? Standing.ARCHIVED : Standing.OPEN);
  }

  /** How many are open. */
  public int openCount() {
    return shelves.store().inquiries().list(InquiryFilter.open()).size();
  }

  /** Whether there is none at all, not even put away. */
  boolean isEmpty() {
    return openCount() == 0 && shelves.store().inquiries().list(InquiryFilter.archived()).isEmpty();
  }

  /** A new inquiry. */
  public InquiryText create(NewInquiry wish) {
    KeptText kept =
        switch (wish.from()) {
          case "template" ->
              titled(Template.text(Objects.requireNonNullElse(wish.units(), "metric")), wish);
          case "text" -> titled(Objects.requireNonNullElse(wish.text(), ""), wish);
          case "inquiry" -> copied(wish);
          default ->
              throw DeskRefusal.of(
                  DeskRefusal.Kind.REFUSED,
                  "from: " + wish.from() + ", allowed: template, text, inquiry");
        };
    String name =
        Optional.ofNullable(wish.title())
            .filter(title -> !title.isBlank())
            .or(() -> shelves.read(kept.text()).head("title"))
            .orElse("Inquiry");
    Revision revision = shelves.store().inquiries().create(name, kept.kept(), shelves.user());
    Shelves.State state = shelves.state(String.valueOf(revision.id()));
    shelves.tell(state);
    return heads.text(state);
  }

  /**
   * A new inquiry from a solid model; what the model does not say is marked in its text.
   *
   * @throws DeskRefusal if no turned piece is found in it
   */
  public InquiryText createFromStep(byte[] file) {
    ImportStep step = ImportStep.bytes("solid.step", file, false, 0);
    String text =
        step.findText()
            .orElseThrow(
                () ->
                    DeskRefusal.of(
                        DeskRefusal.Kind.REFUSED,
                        String.join(" ", step.problems().stream().map(Problem::toLine).toList())));
    return create(new NewInquiry("text", null, null, text, null));
  }

  private KeptText titled(String text, NewInquiry wish) {
    String title = wish.title();
    if (title == null || title.isBlank()) {
      return new KeptText(text, OptionalLong.empty());
    }
    try {
      TextEdit edit = new TextEdit.Put(List.of("inquiry", "title"), title.strip());
      return new KeptText(TextEdits.apply(text, List.of(edit)), OptionalLong.empty());
    } catch (RefusedEditException e) {
      return new KeptText(text, OptionalLong.empty());
    }
  }

  private KeptText copied(NewInquiry wish) {
    Shelves.State source = shelves.state(String.valueOf(wish.inquiryId()));
    String title = wish.title();
    String named = title == null || title.isBlank() ? source.name() + " (copy)" : title;
    NewInquiry renamed = new NewInquiry("text", named, null, null, null);
    return titled(source.kept().text(), renamed);
  }

  /** Text, tree, revision and problems. */
  public InquiryText read(String id) {
    return heads.text(shelves.state(id));
  }

  /** The standing head line. */
  public HeadAnswer head(String id) {
    return heads.head(shelves.state(id));
  }

  /** Saves a whole text; one with errors is kept as well. */
  public InquiryText save(String id, int expectedRevision, String text, String note) {
    return keep(id, expectedRevision, text, note);
  }

  /** Changes single values, one after the other; all or none. */
  public InquiryText editAll(String id, int expectedRevision, List<EditWish> edits, String note) {
    return edit(id, expectedRevision, edits.stream().map(EditWish::edit).toList(), note);
  }

  InquiryText edit(String id, int expectedRevision, List<TextEdit> edits, String note) {
    Shelves.State state = shelves.state(id, expectedRevision);
    try {
      return keep(id, expectedRevision, TextEdits.apply(state.kept().text(), edits), note);
    } catch (RefusedEditException e) {
      throw DeskRefusal.of(
          "The edit cannot be done: " + e.getMessage(),
          state.read().places().of(List.of(e.problem())));
    }
  }

  private InquiryText keep(String id, int expectedRevision, String text, String note) {
    KeptText kept = shelves.state(id, expectedRevision).kept().withText(text);
    return changed(
        id,
        expectedRevision,
        (shelf, number) ->
            Optional.of(shelf.save(number, expectedRevision, kept.kept(), shelves.user(), note)));
  }

  /** Takes the last change back. */
  public InquiryText undo(String id, int expectedRevision) {
    return changed(
        id,
        expectedRevision,
        (shelf, number) -> shelf.undo(number, expectedRevision, shelves.user()));
  }

  /** Makes the change again that was taken back last. */
  public InquiryText redo(String id, int expectedRevision) {
    return changed(
        id,
        expectedRevision,
        (shelf, number) -> shelf.redo(number, expectedRevision, shelves.user()));
  }

  private InquiryText changed(String id, int expectedRevision, Shelves.Changing changing) {
    return shelves
        .change(id, expectedRevision, changing)
        .map(heads::text)
        .orElseThrow(
            () ->
                DeskRefusal.of(
                    DeskRefusal.Kind.REFUSED, "There is nothing to take back or make again."));
  }

  /** Gives another title. */
  public InquiryText rename(String id, int expectedRevision, String name) {
    TextEdit edit = new TextEdit.Put(List.of("inquiry", "title"), name.strip());
    return edit(id, expectedRevision, List.of(edit), "renamed");
  }

  /** Puts it away, or takes it out again. */
  void place(String id, Standing standing) {
    Shelves.State state = shelves.state(id);
    if (standing == Standing.ARCHIVED) {
      shelves.store().inquiries().archive(state.entry().id(), shelves.user());
    } else {
      shelves.store().inquiries().bringBack(state.entry().id(), shelves.user());
    }
    shelves.tell(shelves.state(id));
  }

  /** Puts it away. */
  public void archive(String id) {
    place(id, Standing.ARCHIVED);
  }

  /** Takes it out again. */
  public void bringBack(String id) {
    place(id, Standing.OPEN);
  }

  /** All revisions, newest first. */
  public List<RevisionLine> revisions(String id) {
    Shelves.State state = shelves.state(id);
    List<RevisionLine> lines = new ArrayList<>();
    for (RevisionEntry entry : shelves.store().inquiries().revisions(state.entry().id())) {
      lines.add(
          new RevisionLine(
              entry.revision(),
              entry.when().toString(),
              entry.who(),
              note(entry),
              layout(state.entry().id(), entry.revision())));
    }
    lines.sort(Comparator.comparingInt(RevisionLine::revision).reversed());
    return lines;
  }

  private @Nullable String layout(long number, int revision) {
    OptionalLong layout =
        KeptText.of(shelves.store().inquiries().revision(number, revision).text()).layoutId();
    return layout.isPresent() ? String.valueOf(layout.getAsLong()) : null;
  }

  private static String note(RevisionEntry entry) {
    return entry.what().isBlank() ? entry.kind().name().toLowerCase(Locale.ROOT) : entry.what();
  }

  /** One revision with its text. */
  public RevisionText revision(String id, int revision) {
    Shelves.State state = shelves.state(id);
    if (revision < 1 || revision > state.revision()) {
      throw DeskRefusal.of(
          DeskRefusal.Kind.MISSING,
          "There is no revision " + revision + ", allowed: 1 to " + state.revision() + ".");
    }
    Revision found = shelves.store().inquiries().revision(state.entry().id(), revision);
    KeptText kept = KeptText.of(found.text());
    return new RevisionText(
        revision,
        found.entry().when().toString(),
        found.entry().who(),
        note(found.entry()),
        kept.layoutId().isPresent() ? String.valueOf(kept.layoutId().getAsLong()) : null,
        kept.text());
  }

  /** Name of the file that the text is taken out as. */
  public String fileName(String id) {
    String plain = shelves.state(id).name().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    String trimmed = plain.replaceAll("^-+|-+$", "");
    return (trimmed.isEmpty() ? "inquiry" : trimmed) + ".yaml";
  }

  /** The text as it stands, to the letter. */
  public String text(String id) {
    return shelves.state(id).kept().text();
  }
}
