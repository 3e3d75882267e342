package drumline.store.backup;

import drumline.store.api.StoreFault;
import drumline.store.database.Database;
import drumline.store.database.SqliteFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;

/**
 * Puts a whole database in the place of another. Programs that have it open go on with the new
 * content; they never see half of it.
 */
final class SqliteRestore {
  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss-SSS", Locale.ROOT);

  private SqliteRestore() {}

  /**
   * Replaces the content.
   *
   * @param whole a sound database of this program's version
   * @return where the former content is kept, if there was any
   */
  static Optional<Path> replace(Path target, Path whole) throws IOException {
    boolean wasThere = Files.exists(target);
    Path aside =
        target.resolveSibling(
            "drumline-before-restore-"
                + STAMP.format(LocalDateTime.now(ZoneId.systemDefault()))
                + ".db");
    Optional<Path> kept = wasThere ? Optional.of(aside) : Optional.empty();
    try (Database database = SqliteFile.open(target)) {
      if (wasThere) {
        BackupWriter.write(database, aside);
      }
      SqliteFile.copyInto(database, whole);
    } catch (StoreFault e) {
      if (!e.problems().get(0).code().equals("store-not-a-database")) {
        throw e;
      }
      moveAside(target, aside);
      try (Database database = SqliteFile.open(target)) {
        SqliteFile.copyInto(database, whole);
      }
    }
    return kept;
  }

  private static void moveAside(Path target, Path aside) throws IOException {
    for (String ending : new String[] {"", "-wal", "-shm"}) {
      Path part = target.resolveSibling(target.getFileName() + ending);
      if (Files.exists(part)) {
        Files.move(part, aside.resolveSibling(aside.getFileName() + ending));
      }
    }
  }
}
