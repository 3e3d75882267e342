package drumline.store.contract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drumline.store.Stores;
import drumline.store.api.InquiryShelf;
import drumline.store.api.StaleRevisionException;
import drumline.store.api.Store;
import drumline.store.api.StoreSettings;
import drumline.store.entry.LibraryKind;
import drumline.store.entry.Revision;
import drumline.store.entry.RevisionEntry;
import drumline.store.entry.RevisionKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Revisions, undo and redo. */
interface HistoryContract extends Bench {

  @Test
  default void everyRevisionStaysWithWhoWhenAndWhat() throws StaleRevisionException {
    InquiryShelf shelf = store().inquiries();
    long id = shelf.create("Nipple", "length: 20 mm\n", "Ana").id();
    shelf.save(id, 1, "length: 21 mm\n", "Ben", "longer");
    shelf.rename(id, 2, "Nipple M10", "Ana");
    List<RevisionEntry> history = shelf.revisions(id);
    assertThat(history).extracting(RevisionEntry::revision).containsExactly(1, 2, 3);
    assertThat(history).extracting(RevisionEntry::who).containsExactly("Ana", "Ben", "Ana");
    assertThat(history)
        .extracting(RevisionEntry::what)
        .containsExactly("", "longer", "Nipple → Nipple M10");
    assertThat(history)
        .extracting(RevisionEntry::kind)
        .containsExactly(RevisionKind.CREATED, RevisionKind.SAVED, RevisionKind.RENAMED);
    assertThat(history).extracting(RevisionEntry::when).isSorted();
    assertThat(shelf.revision(id, 1).text()).isEqualTo("length: 20 mm\n");
    assertThat(shelf.head(id).text()).isEqualTo("length: 21 mm\n");
    assertThat(shelf.head(id).name()).isEqualTo("Nipple M10");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "Hülse Ø 12 h9, 90°, ½″, 件, 🛠\n",
        "a\r\nb\rc\n\n \t",
        "it's \"quoted\"; -- :name ? <x> ${json} \\ %_ \u0001\u2028"
      })
  default void textsComeBackToTheLetter(String text) {
    long id = store().inquiries().create("Hülse \"½″\" :x ?", text, "Zoë").id();
    assertThat(store().inquiries().head(id).text()).isEqualTo(text);
    assertThat(store().inquiries().head(id).name()).isEqualTo("Hülse \"½″\" :x ?");
  }

  @Test
  default void aTextThatCannotBeKeptToTheLetterIsRefused() {
    InquiryShelf shelf = store().inquiries();
    assertThatThrownBy(() -> shelf.create("Nipple", "a\0b", "Ana"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("text holds the character U+0000");
    assertThatThrownBy(() -> shelf.create("Nipple", "a\uD800b", "Ana"))
        .hasMessageContaining("half a character at place 2");
    assertThatThrownBy(() -> shelf.create(" ", "a", "Ana")).hasMessageContaining("name is blank");
    assertThatThrownBy(() -> shelf.create("Nipple", "a", "")).hasMessageContaining("who is blank");
    assertThat(store().count().inquiryCount()).isZero();
  }

  @Test
  default void savingTheSameTextWritesNothing() throws StaleRevisionException {
    long id = store().inquiries().create("Nipple", "a", "Ana").id();
    Revision same = store().inquiries().save(id, 1, "a", "Ben", "nothing");
    assertThat(same.revision()).isEqualTo(1);
    assertThat(store().inquiries().revisions(id)).hasSize(1);
  }

  @Test
  default void undoAndRedoWalkTheHistoryAndAreInIt() throws StaleRevisionException {
    InquiryShelf shelf = store().inquiries();
    long id = shelf.create("Nipple", "one", "Ana").id();
    shelf.save(id, 1, "two", "Ana", "");
    shelf.rename(id, 2, "Sleeve", "Ana");
    assertThat(shelf.redo(id, 3, "Ana")).isEmpty();
    Revision undone = shelf.undo(id, 3, "Ben").orElseThrow();
    assertThat(undone.name()).isEqualTo("Nipple");
    assertThat(undone.entry().kind()).isEqualTo(RevisionKind.UNDONE);
    assertThat(undone.entry().what()).isEqualTo("back to revision 2");
    assertThat(shelf.undo(id, 4, "Ben").orElseThrow().text()).isEqualTo("one");
    assertThat(shelf.undo(id, 5, "Ben")).isEmpty();
    assertThat(shelf.redo(id, 5, "Ben").orElseThrow().text()).isEqualTo("two");
    assertThat(shelf.redo(id, 6, "Ben").orElseThrow().name()).isEqualTo("Sleeve");
    assertThat(shelf.redo(id, 7, "Ben")).isEmpty();
    assertThat(shelf.revisions(id))
        .extracting(RevisionEntry::sameAs)
        .containsExactly(1, 2, 3, 2, 1, 2, 3);
  }

  @Test
  default void anEditAfterAnUndoEndsTheWayForwardButLosesNothing() throws StaleRevisionException {
    InquiryShelf shelf = store().inquiries();
    long id = shelf.create("Nipple", "one", "Ana").id();
    shelf.save(id, 1, "two", "Ana", "");
    shelf.undo(id, 2, "Ana");
    shelf.save(id, 3, "other two", "Ana", "");
    assertThat(shelf.redo(id, 4, "Ana")).isEmpty();
    assertThat(shelf.undo(id, 4, "Ana").orElseThrow().text()).isEqualTo("one");
    assertThat(shelf.redo(id, 5, "Ana").orElseThrow().text()).isEqualTo("other two");
    assertThat(shelf.revision(id, 2).text()).isEqualTo("two");
  }

  @Test
  default void undoGoesBackAcrossARestart() throws StaleRevisionException {
    StoreSettings place = emptyPlace();
    long id;
    try (Store first = Stores.open(place)) {
      id = first.inquiries().create("Nipple", "one", "Ana").id();
      first.inquiries().save(id, 1, "two", "Ana", "");
      first.inquiries().save(id, 2, "three", "Ana", "");
      first.inquiries().undo(id, 3, "Ana");
    }
    try (Store second = Stores.open(place)) {
      assertThat(second.inquiries().undo(id, 4, "Ana").orElseThrow().text()).isEqualTo("one");
      assertThat(second.inquiries().redo(id, 5, "Ana").orElseThrow().text()).isEqualTo("two");
      assertThat(second.inquiries().redo(id, 6, "Ana").orElseThrow().text()).isEqualTo("three");
    }
  }

  /** The slow twin: two stacks of texts, as an editor in memory keeps them. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  default void undoAndRedoDoWhatTwoStacksDo(long seed) throws StaleRevisionException {
    Random random = new Random(seed);
    InquiryShelf shelf = store().inquiries();
    long id = shelf.create("Nipple", "0", "Ana").id();
    List<String> back = new ArrayList<>();
    List<String> forward = new ArrayList<>();
    String now = "0";
    List<String> ever = new ArrayList<>(List.of(now));
    for (int step = 1; step <= 60; step++) {
      int head = ever.size();
      int choice = random.nextInt(5);
      Optional<Revision> made;
      if (choice < 2) {
        made = shelf.undo(id, head, "Ana");
        assertThat(made.isPresent()).as("seed %d step %d", seed, step).isEqualTo(!back.isEmpty());
        if (made.isPresent()) {
          forward.add(now);
          now = back.remove(back.size() - 1);
        }
      } else if (choice == 2) {
        made = shelf.redo(id, head, "Ana");
        assertThat(made.isPresent())
            .as("seed %d step %d", seed, step)
            .isEqualTo(!forward.isEmpty());
        if (made.isPresent()) {
          back.add(now);
          now = forward.remove(forward.size() - 1);
        }
      } else {
        made = Optional.of(shelf.save(id, head, "text " + step, "Ana", ""));
        back.add(now);
        forward.clear();
        now = "text " + step;
      }
      if (made.isPresent()) {
        ever.add(now);
        assertThat(made.get().text()).as("seed %d step %d", seed, step).isEqualTo(now);
      }
    }
    for (int revision = 1; revision <= ever.size(); revision++) {
      assertThat(shelf.revision(id, revision).text())
          .as("seed %d revision %d", seed, revision)
          .isEqualTo(ever.get(revision - 1));
    }
  }

  @Test
  default void librariesHaveHistoriesToo() throws StaleRevisionException {
    long id = store().libraries().create(LibraryKind.TOOLS, "Drills", "d: 5 mm", "Ana").id();
    store().libraries().save(id, 1, "d: 6 mm", "Ben", "bigger");
    assertThat(store().libraries().undo(id, 2, "Ana").orElseThrow().text()).isEqualTo("d: 5 mm");
    assertThat(store().libraries().revisions(id)).hasSize(3);
  }

  @Test
  default void whatIsNotThereIsNamed() {
    InquiryShelf shelf = store().inquiries();
    assertThat(shelf.findHead(7)).isEmpty();
    assertThatThrownBy(() -> shelf.head(7)).hasMessage("there is no inquiry 7");
    assertThatThrownBy(() -> shelf.revisions(7)).hasMessage("there is no inquiry 7");
    assertThatThrownBy(() -> shelf.save(7, 1, "a", "Ana", "")).hasMessage("there is no inquiry 7");
    assertThatThrownBy(() -> shelf.archive(7, "Ana")).hasMessage("there is no inquiry 7");
    long id = shelf.create("Nipple", "a", "Ana").id();
    assertThatThrownBy(() -> shelf.revision(id, 2))
        .hasMessage("there is no revision 2 of inquiry/" + id);
  }
}
