package drumline.store.entry;

import java.time.Instant;

/**
 * A person of the team.
 *
 * @param name log-in name
 * @param passwordHash salted hash in its own notation, never the password
 * @param role what the person may do
 * @param access whether the person may log in
 * @param created when the account was created
 */
public record Account(String name, String passwordHash, Role role, Access access, Instant created) {

  /** What a person may do. */
  public enum Role {
    /** Looks at everything, changes nothing. */
    READER,
    /** Works on inquiries, plans, run-offs. */
    PLANNER,
    /** Also keeps libraries, accounts and backups. */
    KEEPER
  }

  /** Whether a person may log in. */
  public enum Access {
    /** May log in. */
    ENABLED,
    /** May not log in; the name stays on what the person did. */
    DISABLED
  }
}
