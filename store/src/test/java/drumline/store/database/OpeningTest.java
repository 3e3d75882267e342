package drumline.store.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import drumline.store.Stores;
import drumline.store.api.Store;
import drumline.store.api.StoreFault;
import drumline.store.api.StoreSettings;
import drumline.store.api.StoreSettings.InFolder;
import drumline.store.contract.TeamServer;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Settings that keep what was saved, and two who open at once. */
class OpeningTest {
  @TempDir Path folder;

  /** Source: [SQLITE-PRAGMA] synchronous: 2 is FULL. */
  @Test
  void eachConnectionWaitsForTheDiskAndChecksReferences() {
    try (Database database = SqliteFile.open(new InFolder(folder).file())) {
      assertThat(pragma(database, "journal_mode")).isEqualTo("wal");
      assertThat(pragma(database, "synchronous")).isEqualTo("2");
      assertThat(pragma(database, "foreign_keys")).isEqualTo("1");
      assertThat(pragma(database, "busy_timeout")).isEqualTo("5000");
    }
  }

  private static String pragma(Database database, String name) {
    return database.read(handle -> handle.createQuery("PRAGMA " + name).mapTo(String.class).one());
  }

  @Test
  void ofManyWhoOpenANewStoreAtOnceAllSucceed() throws Exception {
    for (StoreSettings place :
        List.of(new InFolder(folder.resolve("new")), TeamServer.bareDatabase())) {
      ExecutorService people = Executors.newFixedThreadPool(4);
      try {
        List<Callable<Long>> work =
            new ArrayList<>(Collections.nCopies(4, () -> openAndAdd(place)));
        for (Future<Long> one : people.invokeAll(work)) {
          assertThat(one.get()).isBetween(1L, 4L);
        }
      } finally {
        people.shutdown();
      }
    }
  }

  private static long openAndAdd(StoreSettings place) {
    try (Store store = Stores.open(place)) {
      return store.inquiries().create("Nipple", "a", "Ana").id();
    }
  }

  @Test
  void whoWaitsTooLongForAnotherWriterIsToldSo() throws Exception {
    InFolder place = new InFolder(folder);
    try (Store store = Stores.open(place);
        Connection other = DriverManager.getConnection("jdbc:sqlite:" + place.file());
        Statement statement = other.createStatement()) {
      statement.execute("BEGIN IMMEDIATE");
      StoreFault fault =
          catchThrowableOfType(
              StoreFault.class, () -> store.inquiries().create("Nipple", "a", "Ana"));
      assertThat(fault.problems().get(0).code()).isEqualTo("store-busy");
      statement.execute("ROLLBACK");
      assertThat(store.inquiries().create("Nipple", "a", "Ana").id()).isEqualTo(1);
    }
  }
}
