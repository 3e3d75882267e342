package drumline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StoreCommandsTest {
  private static final String NOTHING =
      ": 0 inquiries, 0 libraries, 0 revisions, 0 plans, 0 run-offs, 0 accounts.";

  @TempDir private Path folder;

  private Terminal run(String command, String path, String data) {
    return Terminal.run(
        command, folder.resolve(path).toString(), "--data", folder.resolve(data).toString());
  }

  @Test
  void aStoreIsBackedUpRestoredExportedAndImported() {
    Terminal backup = run("backup", "shop.bak", "one");
    assertThat(backup.code()).as(backup.all()).isZero();
    assertThat(backup.out().strip())
        .isEqualTo("Backed up to " + folder.resolve("shop.bak") + NOTHING);
    Terminal restore = run("restore", "shop.bak", "one");
    assertThat(restore.code()).as(restore.all()).isZero();
    assertThat(restore.out()).contains("What was there before is kept in " + folder.resolve("one"));
    assertThat(run("export", "files", "one").code()).isZero();
    Terminal bringIn = run("import", "files", "two");
    assertThat(bringIn.code()).as(bringIn.all()).isZero();
    assertThat(bringIn.out().strip())
        .isEqualTo("Imported from " + folder.resolve("files") + NOTHING);
  }

  @Test
  void whatCannotBeDoneIsExplainedAndEndsWithTwo() throws IOException {
    Files.writeString(folder.resolve("note.txt"), "a shopping list");
    Terminal restore = run("restore", "note.txt", "one");
    assertThat(restore.code()).isEqualTo(2);
    assertThat(restore.err())
        .startsWith("error: " + folder.resolve("note.txt"))
        .contains("it is neither a database file nor a zip file");
    assertThat(run("backup", "note.txt", "one").err()).contains("is there already");
    assertThat(run("import", "nowhere", "one").err()).contains("it cannot be read");
    assertThat(run("export", "x", "note.txt").code()).isEqualTo(2);
  }
}
