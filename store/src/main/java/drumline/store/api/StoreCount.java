package drumline.store.api;

import java.util.Map;

/**
 * How much a store, an export or a backup holds, archived things too.
 *
 * @param inquiryCount inquiries
 * @param revisionCount revisions of inquiries and libraries
 * @param libraryCount libraries
 * @param planCount plans
 * @param runoffCount run-offs
 * @param accountCount accounts
 */
public record StoreCount(
    int inquiryCount,
    int revisionCount,
    int libraryCount,
    int planCount,
    int runoffCount,
    int accountCount) {

  /** Of the number of rows by table. */
  public static StoreCount ofRows(Map<String, Integer> rows) {
    return new StoreCount(
        rows.getOrDefault("inquiry", 0),
        rows.getOrDefault("inquiry_revision", 0) + rows.getOrDefault("library_revision", 0),
        rows.getOrDefault("library", 0),
        rows.getOrDefault("plan", 0),
        rows.getOrDefault("runoff", 0),
        rows.getOrDefault("account", 0));
  }
}
