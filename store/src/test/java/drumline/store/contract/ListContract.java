package drumline.store.contract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drumline.store.api.InquiryShelf;
import drumline.store.api.StaleRevisionException;
import drumline.store.entry.InquiryEntry;
import drumline.store.entry.InquiryFilter;
import drumline.store.entry.LibraryEntry;
import drumline.store.entry.LibraryKind;
import drumline.store.entry.RevisionKind;
import drumline.store.entry.Standing;
import drumline.store.entry.Summary;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Lists, finding, copies, archive, summaries. */
interface ListContract extends Bench {

  private List<String> found(String words) {
    return store().inquiries().list(InquiryFilter.open().withWords(words)).stream()
        .map(InquiryEntry::name)
        .toList();
  }

  @Test
  default void wordsAreFoundInNameAndTextInUpperAndLowerCase() throws StaleRevisionException {
    InquiryShelf shelf = store().inquiries();
    shelf.create("Hülse M10", "material: 11SMn30\n", "Ana");
    shelf.create("Nipple", "note: 50 % of volume, bore_2\n", "Ana");
    assertThat(found("HÜLSE")).containsExactly("Hülse M10");
    assertThat(found(" 11smn  m10 ")).containsExactly("Hülse M10");
    assertThat(found("11smn nipple")).isEmpty();
    assertThat(found("50 %")).containsExactly("Nipple");
    assertThat(found("bore_2")).containsExactly("Nipple");
    assertThat(found("bore%2")).isEmpty();
    assertThat(found("b_re")).isEmpty();
    assertThat(found("")).containsExactlyInAnyOrder("Nipple", "Hülse M10");
  }

  @Test
  default void onlyThePresentRevisionIsFound() throws StaleRevisionException {
    InquiryShelf shelf = store().inquiries();
    long id = shelf.create("Nipple", "brass", "Ana").id();
    shelf.save(id, 1, "steel", "Ana", "");
    assertThat(found("brass")).isEmpty();
    assertThat(found("steel")).containsExactly("Nipple");
    shelf.undo(id, 2, "Ana");
    assertThat(found("brass")).containsExactly("Nipple");
  }

  @Test
  default void whatWasChangedLastComesFirst() throws Exception {
    InquiryShelf shelf = store().inquiries();
    long first = shelf.create("first", "", "Ana").id();
    shelf.create("second", "", "Ana");
    Thread.sleep(2);
    shelf.save(first, 1, "changed", "Ben", "x");
    assertThat(found("")).containsExactly("first", "second");
    InquiryEntry entry = shelf.findEntry(first).orElseThrow();
    assertThat(entry.head().who()).isEqualTo("Ben");
    assertThat(entry.created()).isBefore(entry.head().when());
    assertThat(shelf.findEntry(99)).isEqualTo(Optional.empty());
  }

  @Test
  default void anArchivedInquiryLeavesTheListAndComesBackWhole() throws StaleRevisionException {
    InquiryShelf shelf = store().inquiries();
    long id = shelf.create("Nipple", "a", "Ana").id();
    shelf.save(id, 1, "b", "Ana", "");
    shelf.archive(id, "Ana");
    assertThat(found("")).isEmpty();
    assertThat(shelf.list(InquiryFilter.archived())).hasSize(1);
    assertThat(shelf.revisions(id)).hasSize(2);
    shelf.bringBack(id, "Ana");
    assertThat(found("")).containsExactly("Nipple");
    assertThat(store().auditTrail().of("inquiry/" + id))
        .extracting("what")
        .containsExactly("created", "saved", "archived", "brought back");
  }

  @Test
  default void aCopyHasAHistoryOfItsOwn() throws StaleRevisionException {
    InquiryShelf shelf = store().inquiries();
    long id = shelf.create("Nipple", "a", "Ana").id();
    shelf.save(id, 1, "b", "Ana", "");
    long copy = shelf.duplicate(id, "Nipple 2", "Ben").id();
    shelf.save(copy, 1, "c", "Ben", "");
    assertThat(shelf.head(id).text()).isEqualTo("b");
    assertThat(shelf.revision(copy, 1).text()).isEqualTo("b");
    assertThat(shelf.revision(copy, 1).entry().kind()).isEqualTo(RevisionKind.COPIED);
    assertThat(shelf.revision(copy, 1).entry().what())
        .isEqualTo("copied from inquiry/" + id + " revision 2");
    assertThat(shelf.findEntry(copy).orElseThrow().copiedFrom()).isEqualTo(id);
    assertThat(shelf.findEntry(id).orElseThrow().copiedFrom()).isNull();
  }

  @Test
  default void aSummaryComesBackWithSortedKeysAndSaysItsRevision() throws StaleRevisionException {
    InquiryShelf shelf = store().inquiries();
    long id = shelf.create("Nipple", "a", "Ana").id();
    assertThat(shelf.findEntry(id).orElseThrow().summary()).isNull();
    shelf.save(id, 1, "b", "Ana", "");
    shelf.summary(
        id,
        2,
        """
        {"verdict": "feasible", "cycleS": 13.10, "big": 1e21, "none": null,
         "thumbnail": "<svg viewBox=\\"0 0 9 9\\"/>", "a": {"z": [1, 2], "b": "Ø"}}\
        """);
    Summary expected =
        new Summary(
            2,
            "{\"a\":{\"b\":\"Ø\",\"z\":[1,2]},\"big\":1000000000000000000000,\"cycleS\":13.1,"
                + "\"none\":null,\"thumbnail\":\"<svg viewBox=\\\"0 0 9 9\\\"/>\","
                + "\"verdict\":\"feasible\"}");
    assertThat(shelf.findEntry(id).orElseThrow().summary()).isEqualTo(expected);
    shelf.summary(id, 1, "{\"verdict\":\"late\"}");
    assertThat(shelf.list(InquiryFilter.open()).get(0).summary()).isEqualTo(expected);
    shelf.summary(id, 2, "{\"verdict\":\"again\"}");
    assertThat(shelf.list(InquiryFilter.open()).get(0).summary())
        .isEqualTo(new Summary(2, "{\"verdict\":\"again\"}"));
  }

  @Test
  default void aSummaryOfNothingIsRefused() {
    InquiryShelf shelf = store().inquiries();
    long id = shelf.create("Nipple", "a", "Ana").id();
    assertThatThrownBy(() -> shelf.summary(id, 2, "{}"))
        .hasMessage("there is no revision 2 of inquiry/" + id);
    assertThatThrownBy(() -> shelf.summary(id, 1, "[1]")).hasMessageContaining("json is no object");
    assertThatThrownBy(() -> shelf.summary(id, 1, "{\"a\":"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("json cannot be read");
    assertThatThrownBy(() -> shelf.summary(id, 1, "{\"a\":\"\\u0000\"}"))
        .hasMessageContaining("U+0000");
  }

  @Test
  default void librariesAreListedByKindAndName() {
    store().libraries().create(LibraryKind.TOOLS, "b", "", "Ana");
    store().libraries().create(LibraryKind.TOOLS, "B", "", "Ana");
    long a = store().libraries().create(LibraryKind.TOOLS, "a", "", "Ana").id();
    store().libraries().create(LibraryKind.HOUSE_RULES, "ours", "", "Ana");
    store().libraries().duplicate(a, "c", "Ana");
    store().libraries().archive(a, "Ana");
    assertThat(store().libraries().list(LibraryKind.TOOLS, Standing.OPEN))
        .extracting(LibraryEntry::name)
        .containsExactly("B", "b", "c");
    assertThat(store().libraries().list(LibraryKind.TOOLS, Standing.ARCHIVED))
        .extracting(LibraryEntry::name)
        .containsExactly("a");
    assertThat(store().libraries().list(LibraryKind.HOUSE_RULES, Standing.OPEN))
        .extracting(LibraryEntry::kind)
        .containsExactly(LibraryKind.HOUSE_RULES);
  }

  @Test
  default void twoHundredAndFiftyInquiriesAreListedFast() {
    String drawing = "<path d='M0 0 L9 9'/>".repeat(150);
    for (int number = 1; number <= 250; number++) {
      long id = store().inquiries().create("piece " + number, "line\n".repeat(900), "Ana").id();
      store().inquiries().summary(id, 1, "{\"thumbnail\":\"" + drawing + "\"}");
    }
    long bestNs = Long.MAX_VALUE;
    for (int turn = 0; turn < 12; turn++) {
      long startNs = System.nanoTime();
      assertThat(store().inquiries().list(InquiryFilter.open())).hasSize(250);
      bestNs = Math.min(bestNs, System.nanoTime() - startNs);
    }
    assertThat(bestNs / 1e6).as("ms for 250 lines").isLessThan(60);
    assertThat(found("piece 249")).containsExactly("piece 249");
  }
}
