package drumline.store.contract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drumline.store.Stores;
import drumline.store.api.StaleRevisionException;
import drumline.store.api.Store;
import drumline.store.api.StoreCount;
import drumline.store.api.StoreFault;
import drumline.store.api.StoreSettings;
import drumline.store.entry.InquiryFilter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Export, import, backup, restore. */
interface FilesContract extends Bench {

  @Test
  default void anExportBroughtBackIsExportedAgainByteForByte(@TempDir Path work) throws Exception {
    FullShop.fill(store());
    store().exportTo(work.resolve("one"));
    try (Store second = Stores.open(emptyPlace())) {
      second.importFrom(work.resolve("one"));
      second.exportTo(work.resolve("two"));
      assertThat(second.count()).isEqualTo(store().count());
    }
    Map<String, String> one = FolderText.of(work.resolve("one"));
    assertThat(one).hasSizeGreaterThan(60);
    assertThat(FolderText.of(work.resolve("two"))).isEqualTo(one);
  }

  @Test
  default void throughTheOtherDatabaseAndBackItIsTheSame(@TempDir Path work) throws Exception {
    FullShop.fill(store());
    store().exportTo(work.resolve("one"));
    StoreSettings file = new StoreSettings.InFolder(work.resolve("data"));
    for (StoreSettings place : new StoreSettings[] {TeamServer.database(), file}) {
      Path out = work.resolve("two-" + place.getClass().getSimpleName());
      try (Store other = Stores.open(place)) {
        other.importFrom(work.resolve("one"));
        other.exportTo(out);
      }
      assertThat(FolderText.of(out)).isEqualTo(FolderText.of(work.resolve("one")));
    }
  }

  @Test
  default void workGoesOnInAnImportedStore(@TempDir Path work) throws Exception {
    FullShop.fill(store());
    store().exportTo(work.resolve("one"));
    try (Store second = Stores.open(emptyPlace())) {
      second.importFrom(work.resolve("one"));
      assertThat(second.inquiries().undo(4, 4, "Ana").orElseThrow().text()).isEqualTo("n: 4\r\n");
      assertThat(second.inquiries().redo(3, 3, "Ana").orElseThrow().text())
          .isEqualTo("n: 3 # Ø ½\n");
      assertThat(second.inquiries().create("new", "", "Ana").id()).isEqualTo(14);
      assertThat(second.inquiries().list(InquiryFilter.open().withWords("hülse 11"))).hasSize(1);
      assertThat(second.accounts().findAccount("zoë")).isPresent();
      assertThat(second.auditTrail().latest(1).get(0).subject()).isEqualTo("inquiry/14");
    }
  }

  @Test
  default void anImportIntoAStoreThatHoldsSomethingIsRefused(@TempDir Path work) {
    store().exportTo(work.resolve("one"));
    store().inquiries().create("Nipple", "a", "Ana");
    assertThatThrownBy(() -> store().importFrom(work.resolve("one")))
        .isInstanceOf(StoreFault.class)
        .hasMessageContaining("holds 1 rows of")
        .hasMessageContaining("an empty store");
    assertThatThrownBy(() -> store().exportTo(work.resolve("one")))
        .isInstanceOf(StoreFault.class)
        .hasMessageContaining("it holds files already");
  }

  @Test
  default void aFolderThatIsNotWholeChangesNothing(@TempDir Path work) throws Exception {
    FullShop.fill(store());
    Path folder = work.resolve("one");
    store().exportTo(folder);
    Path revisions = folder.resolve("inquiries/000002/revisions");
    Files.delete(revisions.resolve("000001.yaml"));
    Files.writeString(folder.resolve("runoffs/000001/more.txt"), "x");
    Path inquiry = folder.resolve("inquiries/000003/inquiry.json");
    Files.writeString(
        inquiry,
        Files.readString(inquiry).replace("\"OPEN\"", "\"opened\"").replace("head", "haed"));
    try (Store second = Stores.open(emptyPlace())) {
      assertThatThrownBy(() -> second.importFrom(folder))
          .isInstanceOf(StoreFault.class)
          .hasMessageContaining("000001.yaml: it is not there")
          .hasMessageContaining("more.txt: nothing is known of such a file")
          .hasMessageContaining("key standing is \"opened\"; allowed: ARCHIVED, OPEN.")
          .hasMessageContaining("unknown key haed")
          .hasMessageContaining("key head is missing");
      assertThat(second.count()).isEqualTo(new StoreCount(0, 0, 0, 0, 0, 0));
    }
  }

  @Test
  default void anExportThatLostAWholeInquiryIsNoticed(@TempDir Path work) throws Exception {
    FullShop.fill(store());
    Path folder = work.resolve("one");
    store().exportTo(folder);
    for (String file : new String[] {"000002.json", "000002.yaml"}) {
      Files.delete(folder.resolve("inquiries/000012/revisions").resolve(file));
    }
    try (Store second = Stores.open(emptyPlace())) {
      assertThatThrownBy(() -> second.importFrom(folder))
          .isInstanceOf(StoreFault.class)
          .hasMessageContaining("28 rows of inquiry_revision were found")
          .hasMessageContaining("the history of inquiry 12 has a gap");
      assertThat(second.count().inquiryCount()).isZero();
    }
    Files.delete(folder.resolve("drumline-store.json"));
    try (Store third = Stores.open(emptyPlace())) {
      assertThatThrownBy(() -> third.importFrom(folder))
          .hasMessageContaining("drumline-store.json: it is not there");
    }
  }

  @Test
  default void aBackupBringsEverythingBack(@TempDir Path work) throws Exception {
    FullShop.fill(store());
    Path backup = work.resolve("shop backup.bak");
    store().backUpTo(backup);
    store().exportTo(work.resolve("one"));
    assertThatThrownBy(() -> store().backUpTo(backup))
        .isInstanceOf(StoreFault.class)
        .hasMessageContaining("a file of that name is there already");
    StoreSettings place = emptyPlace();
    assertThat(Stores.restore(place, backup)).isEmpty();
    try (Store second = Stores.open(place)) {
      second.exportTo(work.resolve("two"));
    }
    assertThat(FolderText.of(work.resolve("two"))).isEqualTo(FolderText.of(work.resolve("one")));
    assertThat(work.toFile().list()).containsExactlyInAnyOrder("shop backup.bak", "one", "two");
  }

  @Test
  default void aBackupGoesIntoTheOtherDatabaseToo(@TempDir Path work)
      throws StaleRevisionException {
    FullShop.fill(store());
    Path backup = work.resolve("shop.bak");
    store().backUpTo(backup);
    StoreSettings file = new StoreSettings.InFolder(work.resolve("data"));
    for (StoreSettings place : new StoreSettings[] {TeamServer.database(), file}) {
      Stores.restore(place, backup);
      try (Store other = Stores.open(place)) {
        assertThat(other.count()).isEqualTo(store().count());
      }
    }
  }

  @Test
  default void whatIsNoBackupIsRefused(@TempDir Path work) throws Exception {
    Path file = Files.writeString(work.resolve("note.txt"), "a shopping list");
    assertThatThrownBy(() -> Stores.restore(emptyPlace(), file))
        .isInstanceOf(StoreFault.class)
        .hasMessageContaining("it is neither a database file nor a zip file");
    assertThatThrownBy(() -> Stores.restore(emptyPlace(), work.resolve("nowhere.bak")))
        .isInstanceOf(StoreFault.class)
        .hasMessageContaining("nowhere.bak: it cannot be read");
    FullShop.fill(store());
    store().backUpTo(work.resolve("whole.bak"));
    byte[] whole = Files.readAllBytes(work.resolve("whole.bak"));
    Path cut = work.resolve("cut.bak");
    Files.write(cut, Arrays.copyOf(whole, whole.length / 2));
    StoreSettings place = emptyPlace();
    assertThatThrownBy(() -> Stores.restore(place, cut)).isInstanceOf(StoreFault.class);
    try (Store second = Stores.open(place)) {
      assertThat(second.count().inquiryCount()).isZero();
    }
  }
}
