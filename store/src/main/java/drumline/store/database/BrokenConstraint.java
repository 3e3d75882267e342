package drumline.store.database;

/** A row that the tables refuse: a name taken, or something that does not exist. */
public final class BrokenConstraint extends RuntimeException {
  private static final long serialVersionUID = 1L;

  BrokenConstraint(Throwable cause) {
    super(cause);
  }
}
