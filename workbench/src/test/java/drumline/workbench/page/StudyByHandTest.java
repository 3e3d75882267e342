package drumline.workbench.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static drumline.workbench.page.BrowserWindow.button;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import drumline.workbench.TestBench;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Somebody makes a study with mouse and keyboard, closes the program and finds everything again.
 */
class StudyByHandTest {
  @TempDir Path folder;

  @Test
  void everythingIsStillThereAfterARestart() {
    try (BrowserWindow browser = new BrowserWindow()) {
      String id;
      try (TestBench bench = new TestBench(folder)) {
        Page page = browser.open(bench.address(), "/", ColorScheme.LIGHT);
        id = begin(page);
        editDiameter(page);
        addStep(page);
        writeVolume(page);
        assertThat(bench.planned(id, 1).get("state").asText()).isEqualTo("done");
        assertThat(page.locator(".head-figure").first()).containsText("governs");
        undoAndRedo(page);
        page.close();
      }
      try (TestBench again = new TestBench(folder)) {
        Page page = browser.open(again.address(), "/inquiries/" + id + "/print", ColorScheme.LIGHT);
        assertThat(page.locator("h1")).hasText("Bearing pin");
        assertThat(page.locator(".head-figure").first()).containsText("governs");
        assertThat(page.locator(".element-words").first()).containsText("Ø17 h8");
        assertThat(button(page, "Undo")).isEnabled();
        button(page, "Revisions").click();
        assertThat(page.locator(".revision").first()).isVisible();
        assertThat(page.locator(".revision").count()).isGreaterThanOrEqualTo(4);
      }
      assertThat(browser.faults()).isEmpty();
    }
  }

  private static String begin(Page page) {
    button(page, "New inquiry").first().click();
    page.locator("dialog input[name=title]").fill("Bearing pin");
    button(page, "Begin").click();
    page.waitForURL("**/print");
    assertThat(page.locator(".part-drawing svg")).isVisible();
    return page.url().replaceAll(".*/inquiries/([^/]+)/print", "$1");
  }

  private static void editDiameter(Page page) {
    page.locator(".element-pick").first().click();
    Locator size = page.locator(".element-row.is-chosen").getByLabel("Diameter", exact());
    size.fill("17 mm h8");
    size.press("Enter");
    assertThat(page.locator(".element-words").first()).containsText("Ø17 h8");
    assertThat(page.locator(".part-drawing")).containsText("Ø17 h8");
    assertThat(page.locator(".part-drawing .lit").first()).isAttached();
  }

  private static void addStep(Page page) {
    int before = page.locator(".element-pick").count();
    page.getByLabel("Add a step: outside").click();
    assertThat(page.locator(".element-pick")).hasCount(before + 1);
    assertThat(page.locator(".element-row.is-chosen .element-id")).containsText("step-");
    assertThat(page.locator(".problem.is-error")).hasCount(0);
  }

  private static void writeVolume(Page page) {
    page.locator("#tab-inquiry").click();
    Locator volume = page.getByLabel("Per year", exactOnPage());
    volume.fill("310 000");
    volume.press("Enter");
    assertThat(page.getByLabel("Per year", exactOnPage())).hasValue("310 000");
  }

  private static void undoAndRedo(Page page) {
    page.locator("#tab-elements").click();
    assertThat(button(page, "Redo")).isDisabled();
    button(page, "Undo").click();
    assertThat(button(page, "Redo")).isEnabled();
    button(page, "Redo").click();
    assertThat(button(page, "Redo")).isDisabled();
  }

  private static Page.GetByLabelOptions exactOnPage() {
    return new Page.GetByLabelOptions().setExact(true);
  }

  private static Locator.GetByLabelOptions exact() {
    return new Locator.GetByLabelOptions().setExact(true);
  }
}
