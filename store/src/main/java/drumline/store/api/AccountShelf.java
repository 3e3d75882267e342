package drumline.store.api;

import drumline.store.entry.Account;
import java.util.List;
import java.util.Optional;

/** The team's accounts. */
public interface AccountShelf {

  /**
   * A new account, enabled.
   *
   * @throws IllegalArgumentException if the name is taken or blank, or the hash is blank
   */
  Account create(String name, String passwordHash, Account.Role role, String who);

  /** The account, or empty; upper and lower case are the same name. */
  Optional<Account> findAccount(String name);

  /** All, by name. */
  List<Account> list();

  /**
   * Another password.
   *
   * @throws IllegalArgumentException if there is no such account, or the hash is blank
   */
  void changePassword(String name, String passwordHash, String who);

  /**
   * Another role.
   *
   * @throws IllegalArgumentException if there is no such account
   */
  void changeRole(String name, Account.Role role, String who);

  /**
   * Lets the person in or not.
   *
   * @throws IllegalArgumentException if there is no such account
   */
  void changeAccess(String name, Account.Access access, String who);
}
