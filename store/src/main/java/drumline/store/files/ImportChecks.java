package drumline.store.files;

import drumline.shop.problem.Problem;
import drumline.store.api.StoreFault;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;

/** What must be true before and after an import. */
final class ImportChecks {
  private ImportChecks() {}

  static void storeIsEmpty(Handle handle) {
    RowCounts.of(handle)
        .forEach(
            (table, rowCount) -> {
              if (rowCount > 0) {
                throw notEmpty(table, rowCount);
              }
            });
  }

  private static StoreFault notEmpty(String table, int rowCount) {
    return new StoreFault(
        Problem.error(
            "import-store-not-empty",
            "the store",
            "it holds " + rowCount + " rows of " + table + " already",
            "an empty store",
            "Maybe a new folder or database is meant; nothing was changed."));
  }

  static void countsAgree(
      ImportFolder folder, Map<String, Integer> promised, Map<String, Integer> read) {
    for (TableShape shape : TableShapes.ALL) {
      int expected = promised.getOrDefault(shape.table(), 0);
      int found = read.getOrDefault(shape.table(), 0);
      if (expected != found) {
        folder.wrong(
            "import-not-whole",
            FolderNote.FILE,
            found + " rows of " + shape.table() + " were found",
            expected + ", as the note says");
      }
    }
  }

  /** Each history must run from 1 to the head without a gap. */
  static void historiesAreWhole(ImportFolder folder, Handle handle) {
    for (String owner : List.of("inquiry", "library")) {
      handle
          .createQuery(
              "SELECT o.id FROM "
                  + owner
                  + " o WHERE o.head <> (SELECT COUNT(*) FROM "
                  + owner
                  + "_revision r WHERE r.owner = o.id AND r.revision BETWEEN 1 AND o.head)"
                  + " ORDER BY o.id")
          .mapTo(Long.class)
          .forEach(
              id ->
                  folder.wrong(
                      "import-gap-in-history",
                      "",
                      "the history of " + owner + " " + id + " has a gap",
                      "every revision from 1 to its head"));
    }
  }
}
