package drumline.store.database;

import drumline.shop.problem.Problem;
import drumline.store.api.StoreFault;
import java.sql.Connection;
import java.sql.DatabaseMetaData;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;

/** Brings the tables up to this program's version, and refuses what it cannot read. */
public final class SchemaMigration {
  /** The number of the last file in the folder of migrations. */
  public static final int PRESENT_VERSION = 1;

  private static final int PATIENCE_S = 10;
  private static final int PAUSE_MS = 50;
  private static final String HISTORY = "flyway_schema_history";

  private SchemaMigration() {}

  /** Two programs may start at the same time: whoever loses looks whether the other is done. */
  static void migrate(DataSource source, Dialect dialect, String place) throws SQLException {
    long endNs = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_S);
    while (checkedVersion(source, place) < PRESENT_VERSION) {
      try {
        if (flyway(source, dialect).migrate().migrationsExecuted == 0) {
          throw new FlywayException("the files of version " + PRESENT_VERSION + " are missing");
        }
      } catch (FlywayException e) {
        if (System.nanoTime() > endNs) {
          throw new StoreFault(failed(place, e), e);
        }
        LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(PAUSE_MS));
      }
    }
  }

  private static Flyway flyway(DataSource source, Dialect dialect) {
    return Flyway.configure()
        .loggers("slf4j")
        .dataSource(source)
        .locations("classpath:drumline/store/migration")
        .failOnMissingLocations(true)
        .placeholders(dialect.placeholders())
        .load();
  }

  private static Problem failed(String place, FlywayException e) {
    return Problem.error(
        "store-not-migrated",
        place,
        "its tables cannot be made or brought up to date: " + e.getMessage(),
        "tables of version " + PRESENT_VERSION,
        "Maybe the user may not make tables there; nothing was lost.");
  }

  private static int checkedVersion(DataSource source, String place) throws SQLException {
    int found = foundVersion(source, place);
    if (found > PRESENT_VERSION) {
      throw new StoreFault(
          Problem.error(
              "store-from-newer-version",
              place,
              "its tables are of version " + found + ", written by a newer Drumline",
              "version " + PRESENT_VERSION + " or older",
              "Maybe this Drumline must be brought up to date; nothing was changed."));
    }
    return found;
  }

  /** 0 for an empty database. */
  private static int foundVersion(DataSource source, String place) throws SQLException {
    try (Connection connection = source.getConnection()) {
      if (has(connection, HISTORY)) {
        return lastVersion(connection);
      }
      if (has(connection, "%")) {
        throw new StoreFault(
            Problem.error(
                "store-of-another-program",
                place,
                "it holds tables of another program",
                "an empty database, or one made by Drumline",
                "Maybe the name of the database is wrong; nothing was changed."));
      }
      return 0;
    }
  }

  private static boolean has(Connection connection, String tablePattern) throws SQLException {
    DatabaseMetaData tables = connection.getMetaData();
    try (ResultSet found =
        tables.getTables(null, connection.getSchema(), tablePattern, new String[] {"TABLE"})) {
      return found.next();
    }
  }

  private static int lastVersion(Connection connection) throws SQLException {
    String sql =
        "SELECT MAX(CAST(version AS INTEGER)) FROM " + HISTORY + " WHERE version IS NOT NULL";
    try (Statement statement = connection.createStatement();
        ResultSet found = statement.executeQuery(sql)) {
      return found.next() ? found.getInt(1) : 0;
    }
  }
}
