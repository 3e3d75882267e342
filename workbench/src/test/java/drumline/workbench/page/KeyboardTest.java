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

/** From the list to a changed size and back, without a mouse. */
class KeyboardTest {
  private static final int MOST_TABS = 60;

  @TempDir Path folder;

  @Test
  void aSizeIsChangedAndTakenBackByKeysAlone() {
    try (TestBench bench = new TestBench(folder);
        BrowserWindow browser = new BrowserWindow()) {
      bench.example("sleeve.yaml");
      Page page = browser.open(bench.address(), "/", ColorScheme.LIGHT);
      assertThat(page.locator(".inquiries tbody tr")).hasCount(1);
      page.keyboard().press("Tab");
      assertThat(page.locator(".skip")).isFocused();
      page.keyboard().press("/");
      assertThat(page.locator("#find")).isFocused();
      tabTo(page, ".inquiry-name");
      page.keyboard().press("Enter");
      assertThat(page.locator(".part-drawing svg")).isVisible();

      tabTo(page, ".element-pick");
      page.keyboard().press("ArrowDown");
      assertThat(page.locator(".element-row.is-chosen .element-id")).hasText("flange");
      tabTo(page, ".element-row.is-chosen input");
      page.keyboard().press("Tab");
      page.keyboard().press("Tab");
      page.keyboard().press("Tab");
      page.keyboard().press("Control+a");
      page.keyboard().type("34.5 mm");
      page.keyboard().press("Enter");
      assertThat(page.locator(".part-drawing")).containsText("Ø34.5");
      page.keyboard().press("Alt+2");
      assertThat(page.locator(".order-graph")).isVisible();
      page.keyboard().press("Alt+1");
      page.keyboard().press("Control+z");
      assertThat(page.locator(".part-drawing")).not().containsText("Ø34.5");
      assertThat(button(page, "Redo")).isEnabled();
      assertThat(browser.faults()).isEmpty();
    }
  }

  private static void tabTo(Page page, String selector) {
    for (int count = 0; count < MOST_TABS; count++) {
      page.keyboard().press("Tab");
      if ((boolean) page.evaluate("s => document.activeElement.matches(s)", selector)) {
        return;
      }
    }
    throw new AssertionError(
        "no "
            + selector
            + " within "
            + MOST_TABS
            + " tabs; focus is at "
            + page.evaluate("document.activeElement.outerHTML.slice(0, 200)"));
  }
}
