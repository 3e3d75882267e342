package drumline.store.database;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import drumline.shop.problem.Problem;
import drumline.store.api.StoreFault;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConnection;
import org.sqlite.SQLiteDataSource;

/**
 * The embedded database. What was answered as saved is on the disk: each commit waits for it
 * (write-ahead log, synchronous FULL).
 *
 * <p>Source: [SQLITE-PRAGMA] journal_mode, synchronous, foreign_keys, busy_timeout.
 */
public final class SqliteFile {
  private static final int BUSY_TIMEOUT_MS = 5000;
  private static final int CONNECTION_COUNT = 4;

  private SqliteFile() {}

  /**
   * Opens the file, and makes it and its folder if they are not there.
   *
   * @throws StoreFault if it cannot be opened or is not ours
   */
  public static Database open(Path file) {
    String place = file.toString();
    makeFolder(file);
    SQLiteDataSource source = new SQLiteDataSource(config());
    source.setUrl("jdbc:sqlite:" + file);
    try {
      SchemaMigration.migrate(source, Dialect.SQLITE, place);
    } catch (SQLException e) {
      throw FaultReader.fault(e, place);
    }
    HikariConfig pool = new HikariConfig();
    pool.setDataSource(source);
    pool.setMaximumPoolSize(CONNECTION_COUNT);
    pool.setMinimumIdle(1);
    pool.setPoolName("drumline-sqlite");
    return new Database(Dialect.SQLITE, place, new HikariDataSource(pool));
  }

  /**
   * Replaces all content of an open database by that of another file, in one step for everybody.
   *
   * <p>Source: [SQLITE-BACKUP] sqlite3_backup_init and the functions that follow it.
   *
   * @throws StoreFault if the other file cannot be read or this one cannot be written
   */
  public static void copyInto(Database database, Path from) {
    try {
      int code = database.read(handle -> restore(handle.getConnection(), from));
      if (code != 0) {
        throw new SQLException("SQLite result " + code, null, code);
      }
    } catch (SQLException e) {
      throw FaultReader.fault(e, database.place());
    }
  }

  private static int restore(Connection connection, Path from) throws SQLException {
    SQLiteConnection raw = connection.unwrap(SQLiteConnection.class);
    return raw.getDatabase().restore("main", from.toString(), null);
  }

  private static SQLiteConfig config() {
    SQLiteConfig config = new SQLiteConfig();
    config.setJournalMode(SQLiteConfig.JournalMode.WAL);
    config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
    config.enforceForeignKeys(true);
    config.setBusyTimeout(BUSY_TIMEOUT_MS);
    config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
    return config;
  }

  private static void makeFolder(Path file) {
    Path folder = file.toAbsolutePath().resolveSibling(".").normalize();
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw new StoreFault(notWritable(folder, "the folder cannot be made"), e);
    }
    if (!Files.isWritable(folder)) {
      throw new StoreFault(notWritable(folder, "this user may not write to the folder"));
    }
  }

  private static Problem notWritable(Path folder, String found) {
    return Problem.error(
        "store-not-writable",
        folder.toString(),
        found,
        "a folder that this user may write to",
        "Maybe DRUMLINE_DATA names the wrong folder.");
  }
}
