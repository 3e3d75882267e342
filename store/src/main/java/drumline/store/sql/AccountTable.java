package drumline.store.sql;

import drumline.store.api.AccountShelf;
import drumline.store.database.BrokenConstraint;
import drumline.store.database.Database;
import drumline.store.entry.Account;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jdbi.v3.core.statement.StatementContext;

/** The accounts in their table. */
public final class AccountTable implements AccountShelf {
  private final Database database;
  private final Clock clock;

  /** Of a database and the time of day. */
  public AccountTable(Database database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  @Override
  public Account create(String name, String passwordHash, Account.Role role, String who) {
    long atMs = clock.millis();
    Account account =
        new Account(
            Words.required("name", name),
            Words.required("passwordHash", passwordHash),
            role,
            Account.Access.ENABLED,
            Instant.ofEpochMilli(atMs));
    try {
      database.write(
          handle -> {
            AccountRows.add(handle, account);
            AuditLines.write(handle, atMs, who, "created", subject(name), role.name());
            return 1;
          });
    } catch (BrokenConstraint e) {
      throw new IllegalArgumentException("name is " + name + ", which is taken", e);
    }
    return account;
  }

  private static String subject(String name) {
    return "account/" + name;
  }

  static String fold(String name) {
    return name.strip().toLowerCase(Locale.ROOT);
  }

  @Override
  public Optional<Account> findAccount(String name) {
    return database.read(
        handle ->
            handle
                .createQuery("SELECT * FROM account WHERE folded_name = :name")
                .bind("name", fold(name))
                .map(AccountTable::account)
                .findOne());
  }

  @Override
  public List<Account> list() {
    return database
        .read(
            handle -> handle.createQuery("SELECT * FROM account").map(AccountTable::account).list())
        .stream()
        .sorted(Comparator.comparing(account -> fold(account.name())))
        .toList();
  }

  static Account account(ResultSet row, StatementContext context) throws SQLException {
    return new Account(
        row.getString("name"),
        row.getString("password_hash"),
        Account.Role.valueOf(row.getString("role")),
        Account.Access.valueOf(row.getString("access")),
        Instant.ofEpochMilli(row.getLong("created_at_ms")));
  }

  @Override
  public void changePassword(String name, String passwordHash, String who) {
    Words.required("passwordHash", passwordHash);
    change(name, "password_hash", passwordHash, who, "password changed", "");
  }

  @Override
  public void changeRole(String name, Account.Role role, String who) {
    change(name, "role", role.name(), who, "role changed", role.name());
  }

  @Override
  public void changeAccess(String name, Account.Access access, String who) {
    change(name, "access", access.name(), who, "access changed", access.name());
  }

  private void change(
      String name, String column, String value, String who, String what, String note) {
    long atMs = clock.millis();
    database.write(
        handle -> {
          int changed =
              handle
                  .createUpdate(
                      "UPDATE account SET " + column + " = :value WHERE folded_name = :name")
                  .bind("value", value)
                  .bind("name", fold(name))
                  .execute();
          if (changed == 0) {
            throw new IllegalArgumentException("there is no account " + name);
          }
          AuditLines.write(handle, atMs, who, what, subject(name), note);
          return changed;
        });
  }
}
