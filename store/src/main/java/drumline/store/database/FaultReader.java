package drumline.store.database;

import drumline.shop.problem.Problem;
import drumline.store.api.StoreFault;
import java.sql.SQLException;
import org.jspecify.annotations.Nullable;

/**
 * What a database's refusal means. SQLite gives no SQLState, so its result code is read; PostgreSQL
 * gives the SQLState of the standard.
 *
 * <p>Source: [SQLITE-RESULT] result codes; [PG-ERRCODES] appendix A.
 */
final class FaultReader {
  private static final int SQLITE_CONSTRAINT = 19;

  private FaultReader() {}

  static RuntimeException translate(Throwable thrown, String place) {
    SQLException cause = sqlCause(thrown);
    if (cause == null) {
      return new IllegalStateException(thrown);
    }
    return isConstraint(cause) ? new BrokenConstraint(thrown) : fault(cause, place);
  }

  private static @Nullable SQLException sqlCause(Throwable thrown) {
    for (Throwable at = thrown; at != null; at = at.getCause()) {
      if (at instanceof SQLException sql) {
        return sql;
      }
    }
    return null;
  }

  private static boolean isConstraint(SQLException cause) {
    String state = cause.getSQLState();
    return state == null ? cause.getErrorCode() == SQLITE_CONSTRAINT : state.startsWith("23");
  }

  static StoreFault fault(SQLException cause, String place) {
    String state = cause.getSQLState();
    Problem problem =
        state == null ? sqlite(cause, place) : PostgresFaults.problem(state, cause, place);
    return new StoreFault(problem, cause);
  }

  private static Problem sqlite(SQLException cause, String place) {
    return switch (cause.getErrorCode()) {
      case 5, 6 ->
          Problem.error(
              "store-busy",
              place,
              "another program has been writing to it for more than 5 s",
              "one writer at a time",
              "Maybe a backup or another Drumline is at work; try again.");
      case 8, 14 ->
          Problem.error(
              "store-not-writable",
              place,
              "it cannot be opened for writing",
              "a file and a folder that this user may write to",
              "Maybe the folder belongs to another user or the disk is mounted read-only.");
      case 11, 26 ->
          Problem.error(
              "store-not-a-database",
              place,
              "it is not a database, or it is damaged",
              "a file written by Drumline",
              "Maybe another program wrote it; move it aside and restore a backup.");
      case 13 ->
          Problem.error(
              "store-disk-full",
              place,
              "the disk is full",
              "free space for what is saved",
              "Maybe old files can go; what was saved before is still there.");
      default -> FaultReader.other(cause, place);
    };
  }

  static Problem other(SQLException cause, String place) {
    return Problem.error(
        "store-fault", place, String.valueOf(cause.getMessage()), "a working database", "");
  }
}
