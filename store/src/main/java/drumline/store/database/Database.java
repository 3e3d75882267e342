package drumline.store.database;

import com.zaxxer.hikari.HikariDataSource;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.HandleCallback;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.core.transaction.TransactionIsolationLevel;

/** An open database. */
public final class Database implements AutoCloseable {
  private final Dialect dialect;
  private final String place;
  private final HikariDataSource pool;
  private final Jdbi jdbi;

  Database(Dialect dialect, String place, HikariDataSource pool) {
    this.dialect = dialect;
    this.place = place;
    this.pool = pool;
    this.jdbi = Jdbi.create(pool);
  }

  /** Which kind. */
  public Dialect dialect() {
    return dialect;
  }

  /** Where it is, for people; without a password. */
  public String place() {
    return place;
  }

  /**
   * Reads, outside a transaction.
   *
   * @throws drumline.store.api.StoreFault if the database cannot be read
   */
  public <R, X extends Exception> R read(HandleCallback<R, X> question) throws X {
    try {
      return jdbi.withHandle(question);
    } catch (JdbiException e) {
      throw FaultReader.translate(e, place);
    }
  }

  /**
   * Writes in one transaction: all of it or nothing.
   *
   * @throws BrokenConstraint if a row is refused by a constraint
   * @throws drumline.store.api.StoreFault if the database cannot be written
   */
  public <R, X extends Exception> R write(HandleCallback<R, X> change) throws X {
    try {
      return jdbi.inTransaction(change);
    } catch (JdbiException e) {
      throw FaultReader.translate(e, place);
    }
  }

  /**
   * Reads everything as it is at one moment, while others go on writing.
   *
   * @throws drumline.store.api.StoreFault if the database cannot be read
   */
  public <R, X extends Exception> R snapshot(HandleCallback<R, X> question) throws X {
    try {
      return dialect == Dialect.POSTGRESQL
          ? jdbi.inTransaction(TransactionIsolationLevel.REPEATABLE_READ, question)
          : jdbi.withHandle(handle -> inReadTransaction(handle, question));
    } catch (JdbiException e) {
      throw FaultReader.translate(e, place);
    }
  }

  /** A transaction begun by the driver would be one for writing. */
  private static <R, X extends Exception> R inReadTransaction(
      Handle handle, HandleCallback<R, X> question) throws X {
    handle.execute("BEGIN DEFERRED");
    try {
      return question.withHandle(handle);
    } finally {
      handle.execute("ROLLBACK");
    }
  }

  @Override
  public void close() {
    pool.close();
  }
}
