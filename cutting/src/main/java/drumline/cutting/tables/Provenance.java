package drumline.cutting.tables;

/**
 * How far a tabled figure can be trusted; shown beside it wherever it is shown.
 *
 * <p>Source: none, the marks are those of the tables' own source column.
 */
public enum Provenance {
  /** Read in the named source. */
  READ,
  /** Fitted to a table read in the named source. */
  FITTED,
  /** From memory, widely printed; unverified. */
  MEMORY,
  /** From memory and weak: a default to be replaced, never a fact to quote. */
  WEAK_MEMORY;

  /** Whether the figure must carry a visible "unverified" mark. */
  public boolean isUnverified() {
    return this == MEMORY || this == WEAK_MEMORY;
  }
}
