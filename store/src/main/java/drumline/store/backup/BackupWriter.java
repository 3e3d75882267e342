package drumline.store.backup;

import drumline.store.database.Database;
import drumline.store.database.Dialect;
import drumline.store.files.FolderWriter;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * Writes a backup while others go on working: of the embedded database a database file, of a server
 * the export in a zip file. It gets its name when it is whole and on the disk.
 *
 * <p>Source: [SQLITE-VACUUM] VACUUM INTO.
 */
public final class BackupWriter {
  private BackupWriter() {}

  /**
   * Writes the backup.
   *
   * @throws drumline.store.api.StoreFault if there is such a file already or it cannot be written
   */
  public static void write(Database database, Path file) {
    if (Files.exists(file)) {
      throw BackupFaults.fileExists(file);
    }
    try {
      Files.createDirectories(Folders.of(file));
      Path work = Files.createTempDirectory(Folders.of(file), ".drumline-backup-");
      try {
        Path whole = work.resolve("whole");
        if (database.dialect() == Dialect.SQLITE) {
          database.read(
              handle -> handle.execute("VACUUM INTO ?", whole.toAbsolutePath().toString()));
        } else {
          FolderWriter.write(database, work.resolve("files"));
          FolderZip.pack(work.resolve("files"), whole);
        }
        toDisk(whole);
        Files.move(whole, file, StandardCopyOption.ATOMIC_MOVE);
      } finally {
        Folders.remove(work);
      }
    } catch (IOException e) {
      throw BackupFaults.notWritten(file, e);
    }
  }

  private static void toDisk(Path file) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      channel.force(true);
    }
  }
}
