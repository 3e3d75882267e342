package drumline.store;

import drumline.store.api.Store;
import drumline.store.api.StoreSettings;
import drumline.store.database.Database;
import drumline.store.database.PostgresServer;
import drumline.store.database.SqliteFile;
import java.time.Clock;

/** Opens stores. */
public final class Stores {
  private Stores() {}

  /**
   * Opens the store that the settings name; makes the embedded one if it is not there, and brings
   * an older one up to date.
   *
   * @throws drumline.store.api.StoreFault if it cannot be opened; its problem says why
   */
  public static Store open(StoreSettings settings) {
    return open(settings, Clock.systemUTC());
  }

  /** The same with a time of day of the caller's. */
  public static Store open(StoreSettings settings, Clock clock) {
    return new OpenStore(database(settings), clock);
  }

  private static Database database(StoreSettings settings) {
    if (settings instanceof StoreSettings.InFolder folder) {
      return SqliteFile.open(folder.file());
    }
    return PostgresServer.open(((StoreSettings.AtServer) settings).url());
  }
}
