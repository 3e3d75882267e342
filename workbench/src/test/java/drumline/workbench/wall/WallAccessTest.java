package drumline.workbench.wall;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static drumline.workbench.wall.WallWindow.broken;
import static drumline.workbench.wall.WallWindow.view;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The rules of WCAG 2.2 A and AA as axe-core 4.11 checks them, on every view of the layout. */
class WallAccessTest {
  @TempDir static Path folder;
  private static WallWindow window;

  @BeforeAll
  static void plan() {
    window = new WallWindow(folder);
  }

  @AfterAll
  static void stop() {
    if (window != null) {
      window.close();
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = ColorScheme.class,
      names = {"LIGHT", "DARK"})
  void everyViewKeepsTheRules(ColorScheme scheme) {
    Page page = window.wall(scheme);
    assertThat(broken(page)).as("wall, %s", scheme).isEmpty();
    page.locator(".block").first().press("Enter");
    assertThat(page.locator(".panel-figures")).isVisible();
    page.locator(".block").first().press("Shift+ArrowRight");
    assertThat(page.locator(".try-line .figure")).containsText("cycle");
    assertThat(broken(page)).as("figures and a tried move, %s", scheme).isEmpty();
    page.keyboard().press("Escape");
    view(page, "Drum from the front");
    assertThat(page.locator(".drum-view svg")).isVisible();
    assertThat(broken(page)).as("drum, %s", scheme).isEmpty();
    view(page, "Table");
    assertThat(page.locator(".layout-table")).isVisible();
    assertThat(broken(page)).as("table, %s", scheme).isEmpty();
    assertThat(window.faults()).isEmpty();
  }
}
