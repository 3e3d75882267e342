package drumline.workbench.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static drumline.workbench.page.BrowserWindow.button;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import drumline.workbench.TestBench;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two windows on one inquiry: neither overwrites the other without being asked. */
class TwoWindowsTest {
  @TempDir Path folder;

  @Test
  void theSecondWindowIsAskedWhichToKeep() {
    try (TestBench bench = new TestBench(folder);
        BrowserWindow browser = new BrowserWindow()) {
      String id = bench.example("sleeve.yaml");
      Page one = browser.open(bench.address(), "/inquiries/" + id + "/print", ColorScheme.LIGHT);
      Page other = browser.open(bench.address(), "/inquiries/" + id + "/print", ColorScheme.LIGHT);

      String mine = write(other, "# first thought");
      save(one, "# from the other window");
      assertThat(other.locator(".missed")).containsText("while you were writing");
      other.keyboard().press("Control+s");
      assertThat(other.locator("dialog")).containsText("Somebody changed this inquiry since");
      button(other, "Look at both").click();
      assertThat(other.locator(".both")).containsText("# from the other window");
      assertThat(other.locator(".both")).containsText("# first thought");
      button(other, "Keep mine").click();
      assertThat(other.locator("dialog")).hasCount(0);
      assertThat(one.locator("textarea")).hasValue(mine);
      assertThat(textOf(bench, id)).isEqualTo(mine);

      write(other, "# second thought");
      save(one, "# theirs again");
      assertThat(other.locator(".missed")).isVisible();
      other.keyboard().press("Control+s");
      button(other, "Take theirs").click();
      assertThat(other.locator("textarea")).hasValue(textOf(bench, id));
      assertThat(textOf(bench, id)).contains("# theirs again").doesNotContain("second thought");
      assertThat(browser.faults()).isEmpty();
    }
  }

  private static String write(Page page, String line) {
    page.locator("#tab-text").click();
    String text = page.locator("textarea").inputValue() + line + "\n";
    page.locator("textarea").fill(text);
    assertThat(button(page, "Save")).isEnabled();
    return text;
  }

  private static void save(Page page, String line) {
    write(page, line);
    button(page, "Save").click();
    assertThat(button(page, "Save")).isDisabled();
  }

  private static String textOf(TestBench bench, String id) {
    return bench.get("/api/v1/inquiries/" + id).json().get("text").asText();
  }
}
