package drumline.store.backup;

import drumline.shop.problem.Problem;
import drumline.store.api.StoreFault;
import java.io.IOException;
import java.nio.file.Path;

/** What can be wrong with a backup. */
final class BackupFaults {
  private BackupFaults() {}

  static StoreFault fileExists(Path file) {
    return new StoreFault(
        Problem.error(
            "backup-file-exists",
            file.toString(),
            "a file of that name is there already",
            "a new name",
            "Maybe with the date in it; nothing was written."));
  }

  static StoreFault notWritten(Path file, IOException cause) {
    return new StoreFault(
        Problem.error(
            "backup-not-written",
            file.toString(),
            "it cannot be written: " + cause,
            "a folder that this user may write to, with enough space",
            ""),
        cause);
  }

  static StoreFault notABackup(Path file, String found) {
    return new StoreFault(
        Problem.error(
            "backup-not-ours",
            file.toString(),
            found,
            "a file that drumline backup wrote",
            "Maybe it was cut short while it was copied; nothing was changed."));
  }

  static StoreFault unreadable(Path file, IOException cause) {
    return new StoreFault(
        Problem.error(
            "backup-unreadable",
            file.toString(),
            "it cannot be read: " + cause,
            "a file that drumline backup wrote",
            "Maybe the name is misspelt; nothing was changed."),
        cause);
  }
}
