package drumline.store.contract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import drumline.store.api.InquiryShelf;
import drumline.store.api.StaleRevisionException;
import drumline.store.api.Store;
import drumline.store.entry.RevisionEntry;
import drumline.store.measure.Measurement;
import drumline.store.measure.RunoffHead;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;

/** Two windows on one thing. */
interface StaleContract extends Bench {

  @Test
  default void theSecondWindowLearnsWhoSavedAndWhen() throws StaleRevisionException {
    InquiryShelf shelf = store().inquiries();
    long id = shelf.create("Nipple", "one", "Ana").id();
    RevisionEntry bens = shelf.save(id, 1, "Ben's", "Ben", "his").entry();
    StaleRevisionException stale =
        catchThrowableOfType(
            StaleRevisionException.class, () -> shelf.save(id, 1, "Ana's", "Ana", "hers"));
    assertThat(stale.expectedRevision()).isEqualTo(1);
    assertThat(stale.present()).isEqualTo(bens);
    assertThat(stale)
        .hasMessage(
            "revision 1 is no longer the present one: Ben made revision 2 at " + bens.when());
    assertThat(shelf.head(id).text()).isEqualTo("Ben's");
    assertThat(shelf.revisions(id)).hasSize(2);
  }

  @Test
  default void everyChangeOfAStaleRevisionIsRefused() throws StaleRevisionException {
    InquiryShelf shelf = store().inquiries();
    long id = shelf.create("Nipple", "one", "Ana").id();
    shelf.save(id, 1, "two", "Ben", "");
    assertThatThrownBy(() -> shelf.rename(id, 1, "Sleeve", "Ana"))
        .isInstanceOf(StaleRevisionException.class);
    assertThatThrownBy(() -> shelf.undo(id, 1, "Ana")).isInstanceOf(StaleRevisionException.class);
    assertThatThrownBy(() -> shelf.redo(id, 1, "Ana")).isInstanceOf(StaleRevisionException.class);
    assertThatThrownBy(() -> shelf.save(id, 3, "x", "Ana", ""))
        .isInstanceOf(StaleRevisionException.class);
    assertThat(shelf.revisions(id)).hasSize(2);
  }

  @Test
  default void ofManyWhoSaveAtOnceEachRevisionHasOneWinner() throws Exception {
    Store store = store();
    long id = store.inquiries().create("Nipple", "0", "Ana").id();
    ExecutorService people = Executors.newFixedThreadPool(6);
    try {
      List<Callable<List<Integer>>> work = new ArrayList<>();
      for (int person = 0; person < 6; person++) {
        String who = "person " + person;
        work.add(() -> saveTenTimes(store, id, who));
      }
      List<Integer> won = new ArrayList<>();
      for (Future<List<Integer>> one : people.invokeAll(work)) {
        won.addAll(one.get());
      }
      assertThat(won).doesNotHaveDuplicates().hasSize(60);
    } finally {
      people.shutdown();
    }
    List<RevisionEntry> history = store.inquiries().revisions(id);
    assertThat(history).hasSize(61);
    for (RevisionEntry entry : history.subList(1, 61)) {
      assertThat(store.inquiries().revision(id, entry.revision()).text())
          .isEqualTo(entry.who() + " after " + (entry.revision() - 1));
    }
  }

  private static List<Integer> saveTenTimes(Store store, long id, String who) {
    List<Integer> won = new ArrayList<>();
    int head = store.inquiries().head(id).revision();
    while (won.size() < 10) {
      try {
        head = store.inquiries().save(id, head, who + " after " + head, who, "").revision();
        won.add(head);
      } catch (StaleRevisionException e) {
        head = e.present().revision();
      }
    }
    return won;
  }

  @Test
  default void twoWhoMeasureAtOnceLoseNoReading() throws Exception {
    Store store = store();
    long inquiry = store.inquiries().create("Nipple", "0", "Ana").id();
    long id = store.runoffs().begin(new RunoffHead(inquiry, 1, "six", "first"), "Ana").entry().id();
    ExecutorService people = Executors.newFixedThreadPool(4);
    try {
      List<Callable<Boolean>> work = new ArrayList<>();
      for (int index = 1; index <= 4; index++) {
        int spindle = index;
        work.add(() -> measureTenPieces(store, id, spindle));
      }
      for (Future<Boolean> one : people.invokeAll(work)) {
        assertThat(one.get()).isTrue();
      }
    } finally {
      people.shutdown();
    }
    assertThat(store.runoffs().findRunoff(id).orElseThrow().measurements()).hasSize(40);
  }

  private static boolean measureTenPieces(Store store, long id, int spindle) {
    for (int piece = 1; piece <= 10; piece++) {
      Measurement one = new Measurement("Ø12", spindle, piece, new BigDecimal("12.003"), "mm");
      store.runoffs().add(id, List.of(one), "Ana");
    }
    return true;
  }
}
