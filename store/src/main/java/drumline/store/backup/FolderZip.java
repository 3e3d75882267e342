package drumline.store.backup;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** A folder of files in one zip file; the same folder gives the same file. */
final class FolderZip {
  private static final LocalDateTime ANY_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

  private FolderZip() {}

  static void pack(Path folder, Path file) throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.walk(folder)) {
      files = all.filter(Files::isRegularFile).sorted().toList();
    }
    try (OutputStream out = Files.newOutputStream(file);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Path one : files) {
        ZipEntry entry = new ZipEntry(folder.relativize(one).toString().replace('\\', '/'));
        entry.setTimeLocal(ANY_TIME);
        zip.putNextEntry(entry);
        Files.copy(one, zip);
        zip.closeEntry();
      }
    }
  }

  /** A name that leads out of the folder is refused. */
  static void unpack(Path file, Path folder) throws IOException {
    Path root = folder.toAbsolutePath().normalize();
    try (InputStream in = Files.newInputStream(file);
        ZipInputStream zip = new ZipInputStream(in)) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        Path target = root.resolve(entry.getName()).normalize();
        if (!target.startsWith(root)) {
          throw BackupFaults.notABackup(file, "it holds a file outside its folder");
        }
        if (!entry.isDirectory()) {
          Files.createDirectories(Folders.of(target));
          Files.copy(zip, target);
        }
      }
    }
  }
}
