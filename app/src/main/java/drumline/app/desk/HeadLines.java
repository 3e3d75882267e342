package drumline.app.desk;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import drumline.app.answer.Head;
import drumline.app.answer.HeadAnswer;
import drumline.app.answer.InquiryText;
import drumline.app.answer.ListedInquiry;
import drumline.app.shelf.LayoutCase;
import drumline.app.shelf.LayoutCases;
import drumline.app.shelf.ReadText;
import drumline.app.shelf.Shelves;
import drumline.app.view.HeadView;
import drumline.drawing.strip.WorkpieceHeads;
import drumline.shape.section.PartSection;
import drumline.shop.inquiry.Inquiry;
import drumline.store.entry.InquiryEntry;
import drumline.store.entry.Summary;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Head lines, and the lines of the list that are made of them. */
final class HeadLines {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final Shelves shelves;
  private final LayoutCases cases;
  private final Function<String, Optional<String>> jobs;

  /**
   * Head lines.
   *
   * @param jobs the job that plans an inquiry now, if one does
   */
  HeadLines(Shelves shelves, LayoutCases cases, Function<String, Optional<String>> jobs) {
    this.shelves = shelves;
    this.cases = cases;
    this.jobs = jobs;
  }

  @Nullable String job(String id) {
    return jobs.apply(id).orElse(null);
  }

  InquiryText text(Shelves.State state) {
    ReadText read = state.read();
    return new InquiryText(
        state.id(),
        state.name(),
        state.revision(),
        state.entry().head().when().toString(),
        state.entry().head().who(),
        state.isArchived(),
        state.entry().head().undoTo() != null,
        state.entry().head().redoTo() != null,
        read.units().name().toLowerCase(Locale.ROOT),
        state.kept().text(),
        read.tree().orElse(null),
        read.places().of(read.opened().problems()),
        job(state.id()));
  }

  HeadAnswer head(Shelves.State state) {
    return new HeadAnswer(
        state.id(),
        state.name(),
        state.revision(),
        thumbnail(state),
        state.entry().head().undoTo() != null,
        state.entry().head().redoTo() != null,
        state.read().errorCount(),
        figures(state),
        job(state.id()),
        state.entry().head().when().toString(),
        state.entry().head().who());
  }

  Head figures(Shelves.State state) {
    Optional<LayoutCase> present = cases.present(state);
    if (present.isPresent()) {
      LayoutCase one = present.get();
      return HeadView.planned(
          one.bench().inquiry(),
          one.bench().machine(),
          triage(state, one),
          cases.lay(state, one),
          one.boundS(),
          one.isProvenOptimal());
    }
    return state
        .read()
        .findInquiry()
        .map(inquiry -> HeadView.unplanned(inquiry, state.read().triage()))
        .orElseGet(HeadView::unknown);
  }

  /** Triage of the text as it stands, or of the one that the layout was made for. */
  drumline.economics.triage.Triage triage(Shelves.State state, LayoutCase one) {
    return state.read().findInquiry().isPresent()
        ? state.read().triage()
        : shelves.read(one.keptLayout().inquiryText()).triage();
  }

  private static @Nullable String thumbnail(Shelves.State state) {
    return state.read().findInquiry().map(HeadLines::thumbnail).orElse(null);
  }

  private static String thumbnail(Inquiry inquiry) {
    return WorkpieceHeads.piece(
        inquiry.part().name(), PartSection.of(inquiry.part(), inquiry.bar()).piece());
  }

  /** A line of the list; taken from the store's summary where that is of this revision. */
  ListedInquiry listed(InquiryEntry entry) {
    Summary summary = entry.summary();
    if (summary != null && summary.revision() == entry.head().revision()) {
      try {
        return asNow(MAPPER.readValue(summary.json(), ListedInquiry.class), entry);
      } catch (JsonProcessingException e) {
        return renewed(entry); // written by another version of the program
      }
    }
    return renewed(entry);
  }

  private ListedInquiry renewed(InquiryEntry entry) {
    ListedInquiry line = line(shelves.state(entry));
    try {
      shelves
          .store()
          .inquiries()
          .summary(entry.id(), entry.head().revision(), MAPPER.writeValueAsString(line));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("the line cannot be written as JSON", e);
    }
    return asNow(line, entry);
  }

  private ListedInquiry line(Shelves.State state) {
    ReadText read = state.read();
    return new ListedInquiry(
        state.id(),
        state.name(),
        read.head("customer").orElse(""),
        read.head("number").orElse(""),
        read.findInquiry().map(i -> i.part().name()).orElse(""),
        read.findInquiry().map(i -> i.material().name()).orElse(""),
        cases.present(state).map(one -> one.bench().machine().name()).orElse(null),
        thumbnail(state),
        state.revision(),
        state.isArchived(),
        read.errorCount(),
        figures(state),
        null,
        state.entry().head().when().toString(),
        state.entry().head().who());
  }

  private ListedInquiry asNow(ListedInquiry line, InquiryEntry entry) {
    return new ListedInquiry(
        line.id(),
        line.name(),
        line.customer(),
        line.number(),
        line.partName(),
        line.material(),
        line.machineName(),
        line.thumbnailSvg(),
        entry.head().revision(),
        entry.standing() == drumline.store.entry.Standing.ARCHIVED,
        line.errorCount(),
        line.head(),
        job(String.valueOf(entry.id())),
        entry.head().when().toString(),
        entry.head().who());
  }
}
