package drumline.store.sql;

import drumline.store.entry.Account;
import org.jdbi.v3.core.Handle;

/** Adds rows to the table of accounts. */
final class AccountRows {
  private AccountRows() {}

  static void add(Handle handle, Account account) {
    handle
        .createUpdate(
            "INSERT INTO account (name, folded_name, password_hash, role, access, created_at_ms)"
                + " VALUES (:name, :foldedName, :passwordHash, :role, :access, :createdAtMs)")
        .bind("name", account.name())
        .bind("foldedName", AccountTable.fold(account.name()))
        .bind("passwordHash", account.passwordHash())
        .bind("role", account.role().name())
        .bind("access", account.access().name())
        .bind("createdAtMs", account.created().toEpochMilli())
        .execute();
  }
}
