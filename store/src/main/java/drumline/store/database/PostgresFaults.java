package drumline.store.database;

import drumline.shop.problem.Problem;
import java.sql.SQLException;

/** What a PostgreSQL server's refusal means. Source: [PG-ERRCODES] appendix A. */
final class PostgresFaults {
  private PostgresFaults() {}

  static Problem problem(String state, SQLException cause, String place) {
    if (state.startsWith("08")) {
      return Problem.error(
          "store-server-down",
          place,
          "no PostgreSQL server answers there",
          "a running server that this computer can reach",
          "Maybe the server is stopped, or host or port is wrong, or a firewall is between.");
    }
    return switch (state) {
      case "28P01", "28000" ->
          Problem.error(
              "store-log-in-refused",
              place,
              "the server refuses user or password",
              "a user of that database",
              "Maybe the password in DRUMLINE_DATABASE is out of date.");
      case "3D000" ->
          Problem.error(
              "store-no-such-database",
              place,
              "the server has no database of that name",
              "a database that exists, maybe empty",
              "Maybe it must be made first, with createdb.");
      case "42501" ->
          Problem.error(
              "store-not-writable",
              place,
              "the user may not make or change tables there",
              "a user that owns the database or its schema",
              "Maybe the database was made by another user.");
      default -> FaultReader.other(cause, place);
    };
  }
}
