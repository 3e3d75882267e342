package drumline.store.contract;

import drumline.store.Stores;
import drumline.store.api.Store;
import drumline.store.api.StoreSettings;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** The suite on the embedded database. */
class SqliteContractTest
    implements HistoryContract, StaleContract, ListContract, ShelfContract, FilesContract {
  private final AtomicInteger number = new AtomicInteger();
  @TempDir Path folder;
  private Store store;

  @BeforeEach
  void open() {
    store = Stores.open(emptyPlace());
  }

  @AfterEach
  void close() {
    store.close();
  }

  @Override
  public Store store() {
    return store;
  }

  @Override
  public StoreSettings emptyPlace() {
    return new StoreSettings.InFolder(folder.resolve("shop" + number.incrementAndGet()));
  }
}
