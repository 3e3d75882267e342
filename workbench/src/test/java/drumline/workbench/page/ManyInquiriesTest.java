package drumline.workbench.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import drumline.workbench.TestBench;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The list with two hundred inquiries, and what a place weighs. */
class ManyInquiriesTest {
  private static final int MANY = 200;
  private static final long MOST_BYTES = 1_000_000;

  @TempDir Path folder;

  @Test
  void twoHundredAreListedAndFound() {
    try (TestBench bench = new TestBench(folder);
        BrowserWindow browser = new BrowserWindow()) {
      String id = bench.example("sleeve.yaml");
      for (int i = 1; i < MANY; i++) {
        bench.post("/api/v1/inquiries", variant(i, id));
      }
      Page page = browser.open(bench.address(), "/", ColorScheme.LIGHT);
      assertThat(page.locator(".inquiries tbody tr")).hasCount(MANY);
      page.locator("#find").fill("variant 17");
      assertThat(page.locator(".inquiries tbody tr")).hasCount(12);
      page.locator("#find").fill("no such piece");
      assertThat(page.locator(".state h2")).hasText("Nothing found");
      assertThat(browser.faults()).isEmpty();
    }
  }

  /** Every twentieth is a whole piece; the others have only just been begun. */
  private static Map<String, String> variant(int number, String id) {
    String title = "Variant " + number;
    return number % 20 == 0
        ? Map.of("from", "inquiry", "inquiryId", id, "title", title)
        : Map.of("from", "text", "text", "inquiry:\n  title: " + title + "\n");
  }

  @Test
  void noPlaceWeighsMoreThanAMegabyteOrAsksOutside() {
    try (TestBench bench = new TestBench(folder);
        BrowserWindow browser = new BrowserWindow()) {
      String id = bench.example("valve-seat-body.yaml");
      bench.planned(id, 1);
      for (String leaf : new String[] {"print", "route", "money", "run-off"}) {
        Page page =
            browser.open(bench.address(), "/inquiries/" + id + "/" + leaf, ColorScheme.LIGHT);
        assertThat(page.locator(".leaf h2").first()).isVisible();
        Number bytes =
            (Number)
                page.evaluate(
                    "performance.getEntries().filter(e => e.decodedBodySize)"
                        + ".reduce((sum, e) => sum + e.decodedBodySize, 0)");
        Object outside =
            page.evaluate(
                "performance.getEntriesByType('resource')"
                    + ".filter(e => !e.name.startsWith(location.origin)).length");
        assertThat(bytes.longValue()).as(leaf).isBetween(50_000L, MOST_BYTES);
        assertThat(outside).as(leaf).isEqualTo(0);
      }
      assertThat(browser.faults()).isEmpty();
    }
  }
}
