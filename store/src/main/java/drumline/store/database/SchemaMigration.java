package drumline.store.database;

import drumline.shop.problem.Problem;
import drumline.store.api.StoreFault;
import java.sql.Connection;
import java.sql.DatabaseMetaData;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;

/** Brings the tables up to this program's version, and refuses what it cannot read. */
final class SchemaMigration {
  /** The number of the last file in the folder of migrations. */
  static final int PRESENT_VERSION = 1;

  private static final String HISTORY = "flyway_schema_history";

  private SchemaMigration() {}

  static void migrate(DataSource source, Dialect dialect, String place) throws SQLException {
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
    if (found < PRESENT_VERSION) {
      Flyway.configure()
          .loggers("slf4j")
          .dataSource(source)
          .locations("classpath:drumline/store/migration")
          .placeholders(dialect.placeholders())
          .load()
          .migrate();
    }
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
