package drumline.store.entry;

/** Whether something is in daily use or laid away. Nothing is ever deleted. */
public enum Standing {
  /** In daily use. */
  OPEN,
  /** Laid away: not in lists unless asked for, else whole. */
  ARCHIVED
}
