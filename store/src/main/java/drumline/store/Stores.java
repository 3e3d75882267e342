package drumline.store;

import drumline.store.api.Store;
import drumline.store.api.StoreSettings;
import drumline.store.backup.BackupReader;
import drumline.store.database.Database;
import drumline.store.database.PostgresServer;
import drumline.store.database.SqliteFile;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;

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

  /**
   * Brings a backup back into the store that the settings name. An embedded store that held
   * something is kept beside it first; a server's database must be empty.
   *
   * @return where the former content is kept, if there was any
   * @throws drumline.store.api.StoreFault if the file is no whole backup or the store cannot take
   *     it; nothing is changed then
   */
  public static Optional<Path> restore(StoreSettings settings, Path file) {
    return BackupReader.restore(settings, file);
  }

  private static Database database(StoreSettings settings) {
    if (settings instanceof StoreSettings.InFolder folder) {
      return SqliteFile.open(folder.file());
    }
    return PostgresServer.open(((StoreSettings.AtServer) settings).url());
  }
}
