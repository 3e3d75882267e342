package drumline.store.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drumline.store.Stores;
import drumline.store.api.Store;
import drumline.store.api.StoreFault;
import drumline.store.api.StoreSettings;
import drumline.store.api.StoreSettings.InFolder;
import drumline.store.contract.FullShop;
import drumline.store.contract.TeamServer;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Restoring over what is there. */
class RestoreTest {
  @TempDir Path folder;

  private Path backup() throws Exception {
    Path backup = folder.resolve("shop.bak");
    try (Store store = Stores.open(new InFolder(folder.resolve("first")))) {
      FullShop.fill(store);
      store.backUpTo(backup);
    }
    return backup;
  }

  @Test
  void whatWasThereIsKeptAndAnOpenStoreGoesOnWithTheNewContent() throws Exception {
    Path backup = backup();
    StoreSettings place = new InFolder(folder.resolve("second"));
    try (Store open = Stores.open(place)) {
      open.inquiries().create("only here", "a", "Ana");
      Path kept = Stores.restore(place, backup).orElseThrow();
      assertThat(open.inquiries().head(1).name()).isEqualTo("Hülse 1");
      assertThat(open.inquiries().save(1, 2, "b", "Ana", "").revision()).isEqualTo(3);
      Stores.restore(place, kept);
      assertThat(open.inquiries().head(1).name()).isEqualTo("only here");
      assertThat(open.count().inquiryCount()).isEqualTo(1);
    }
  }

  @Test
  void aDamagedStoreIsMovedAside() throws Exception {
    Path backup = backup();
    InFolder place = new InFolder(folder.resolve("second"));
    Files.createDirectories(place.folder());
    Files.writeString(place.file(), "no database at all\n".repeat(100));
    Path kept = Stores.restore(place, backup).orElseThrow();
    assertThat(Files.readString(kept)).startsWith("no database at all");
    try (Store store = Stores.open(place)) {
      assertThat(store.count().inquiryCount()).isEqualTo(13);
    }
  }

  @Test
  void aServerThatHoldsSomethingIsNotOverwritten() throws Exception {
    Path backup = backup();
    StoreSettings.AtServer place = TeamServer.database();
    assertThat(Stores.restore(place, backup)).isEqualTo(Optional.empty());
    assertThatThrownBy(() -> Stores.restore(place, backup))
        .isInstanceOf(StoreFault.class)
        .hasMessageContaining("an empty store");
  }

  @Test
  void aBackupWithDamagedPagesChangesNothing() throws Exception {
    Path backup = backup();
    byte[] bytes = Files.readAllBytes(backup);
    for (int index = 4096; index < bytes.length; index += 4096) {
      bytes[index] = (byte) 0x7f; // the kind of each page after the first
    }
    Files.write(backup, bytes);
    StoreSettings place = new InFolder(folder.resolve("second"));
    try (Store open = Stores.open(place)) {
      open.inquiries().create("only here", "a", "Ana");
      assertThatThrownBy(() -> Stores.restore(place, backup))
          .isInstanceOf(StoreFault.class)
          .hasMessageContaining("the database in it is damaged");
      assertThat(open.inquiries().head(1).name()).isEqualTo("only here");
    }
  }

  @Test
  void aZipThatLeadsOutOfItsFolderIsRefused() throws Exception {
    Path zip = folder.resolve("bad.zip");
    try (OutputStream out = Files.newOutputStream(zip);
        ZipOutputStream entries = new ZipOutputStream(out)) {
      entries.putNextEntry(new ZipEntry("../../escaped.txt"));
      entries.write(1);
      entries.closeEntry();
    }
    assertThatThrownBy(() -> Stores.restore(new InFolder(folder.resolve("second")), zip))
        .isInstanceOf(StoreFault.class)
        .hasMessageContaining("it holds a file outside its folder");
  }
}
