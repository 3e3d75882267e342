package drumline.workbench.wall;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static drumline.workbench.wall.WallWindow.broken;
import static drumline.workbench.wall.WallWindow.button;
import static drumline.workbench.wall.WallWindow.view;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Planning again is watched and stopped; the two layouts then stand side by side. */
class PlanAgainTest {
  @TempDir Path folder;

  @Test
  void aPlanIsStoppedComparedAndTheFormerOneUsed() {
    try (WallWindow window = new WallWindow(folder)) {
      Page page = window.wall(ColorScheme.LIGHT);
      String former = window.layout().get("layoutId").asText();
      button(page, "Plan again …").click();
      page.locator("input[name=seconds]").fill("600");
      button(page, "Plan").click();
      assertThat(page.locator(".planning-progress")).containsText("best so far");
      assertThat(page.locator(".planning-progress .best")).hasCount(1);
      button(page, "Stop and keep the best").click();
      assertThat(page.locator(".planning-panel [role=status]")).containsText("cycle of");
      assertThat(page.locator(".planning-progress")).hasCount(0);
      button(page, "Close").click();
      assertThat(page.locator(".planning-panel")).hasCount(0);

      JsonNode layouts = window.layouts();
      assertThat(layouts).hasSize(2);
      String present = window.layout().get("layoutId").asText();
      assertThat(present).isNotEqualTo(former);
      view(page, "Compare");
      assertThat(page.locator(".layout-list tbody tr")).hasCount(2);
      assertThat(page.locator(".compare-wall")).hasCount(2);
      assertThat(page.locator(".compare-figures tbody tr").first()).containsText("cycle");
      assertThat(broken(page)).isEmpty();
      button(page, "Use").click();
      assertThat(page.locator("layout-compare")).hasCount(0);
      assertThat(page.locator(".block").first()).isVisible();
      assertThat(window.layout().get("layoutId").asText()).isEqualTo(former);
      assertThat(window.faults()).isEmpty();
    }
  }
}
