package drumline.store.entry;

/** What a library describes. */
public enum LibraryKind {
  /** Work materials with their cutting data. */
  MATERIALS,
  /** Tools with holders and edges. */
  TOOLS,
  /** Machines with positions, slides and limits. */
  MACHINES,
  /** Rates, allowances and habits of the house. */
  HOUSE_RULES
}
