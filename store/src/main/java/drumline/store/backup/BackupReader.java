package drumline.store.backup;

import drumline.store.api.StoreFault;
import drumline.store.api.StoreSettings;
import drumline.store.database.Database;
import drumline.store.database.PostgresServer;
import drumline.store.database.SqliteFile;
import drumline.store.files.FolderReader;
import drumline.store.files.FolderWriter;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Brings a backup back into a store; what the store held before is kept beside it. */
public final class BackupReader {
  private static final String SQLITE_MAGIC = "SQLite format 3\0";
  private static final String ZIP_MAGIC = "PK\3\4";

  private final Path file;
  private final Path work;

  private BackupReader(Path file, Path work) {
    this.file = file;
    this.work = work;
  }

  /**
   * Brings it back. The backup is first read in a copy, so that a damaged one changes nothing.
   *
   * @return where the embedded database as it was before is kept, if it was not empty
   * @throws StoreFault if the file is no whole backup, or is to go into a server's database, or
   *     from a server into a file, that holds something
   */
  public static Optional<Path> restore(StoreSettings settings, Path file) {
    try {
      Path work = Files.createTempDirectory("drumline-restore-");
      try {
        return new BackupReader(file, work).restore(settings);
      } finally {
        Folders.remove(work);
      }
    } catch (IOException e) {
      throw BackupFaults.unreadable(file, e);
    }
  }

  private Optional<Path> restore(StoreSettings settings) throws IOException {
    if (startsWith(ZIP_MAGIC)) {
      Path folder = work.resolve("files");
      FolderZip.unpack(file, folder);
      return importInto(settings, folder);
    }
    if (!startsWith(SQLITE_MAGIC)) {
      throw BackupFaults.notABackup(file, "it is neither a database file nor a zip file");
    }
    Path copy = checkedCopy();
    if (settings instanceof StoreSettings.InFolder folder) {
      return SqliteRestore.replace(folder.file(), copy);
    }
    Path folder = work.resolve("files");
    try (Database source = SqliteFile.open(copy)) {
      FolderWriter.write(source, folder);
    }
    return importInto(settings, folder);
  }

  private static Optional<Path> importInto(StoreSettings settings, Path folder) {
    try (Database target =
        settings instanceof StoreSettings.AtServer server
            ? PostgresServer.open(server.url())
            : SqliteFile.open(((StoreSettings.InFolder) settings).file())) {
      FolderReader.read(target, folder);
    }
    return Optional.empty();
  }

  private boolean startsWith(String magic) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      byte[] head = in.readNBytes(magic.length());
      return new String(head, StandardCharsets.ISO_8859_1).equals(magic);
    }
  }

  /** Brought up to this program's version, and sound. */
  private Path checkedCopy() throws IOException {
    Path copy = Files.copy(file, work.resolve("copy.db"));
    try (Database database = SqliteFile.open(copy)) {
      String verdict =
          database.read(
              handle ->
                  handle.createQuery("PRAGMA integrity_check").mapTo(String.class).list().get(0));
      if (!verdict.equals("ok")) {
        throw BackupFaults.notABackup(file, "the database in it is damaged: " + verdict);
      }
    } catch (StoreFault e) {
      throw e.problems().get(0).code().equals("store-not-a-database")
          ? BackupFaults.notABackup(file, "the database in it is damaged")
          : e;
    }
    return copy;
  }
}
