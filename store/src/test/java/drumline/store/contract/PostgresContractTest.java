package drumline.store.contract;

import drumline.store.Stores;
import drumline.store.api.Store;
import drumline.store.api.StoreSettings;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;

/** The suite on a real PostgreSQL server. */
class PostgresContractTest
    implements HistoryContract, StaleContract, ListContract, ShelfContract, FilesContract {
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
    return TeamServer.database();
  }
}
