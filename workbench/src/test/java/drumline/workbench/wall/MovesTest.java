package drumline.workbench.wall;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static drumline.workbench.wall.WallWindow.block;
import static drumline.workbench.wall.WallWindow.button;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import drumline.workbench.wall.Seen.Standing;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Blocks are moved, kept, put back and pinned; the page says what the server says. */
class MovesTest {
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

  @AfterEach
  void noFaults() {
    assertThat(window.faults()).isEmpty();
  }

  @Test
  void theWallShowsEveryOperationOnce() {
    Page page = window.wall(ColorScheme.LIGHT);
    JsonNode layout = window.layout();
    assertThat(page.locator(".block")).hasCount(Seen.standings(layout).size());
    for (Standing standing : Seen.standings(layout)) {
      assertThat(
              page.locator(
                  "[data-slide='"
                      + standing.slideId()
                      + "'] [data-operation='"
                      + standing.operationId()
                      + "']"))
          .hasCount(1);
    }
    assertThat(page.locator(".wall-words")).containsText("cycle " + Seen.cycle(layout) + " s");
    assertThat(page.locator(".wall-column.is-governing")).not().hasCount(0);
  }

  @Test
  void aMoveByKeysAloneIsTriedAndPutBack() {
    Page page = window.wall(ColorScheme.LIGHT);
    JsonNode before = window.layout();
    Standing first = Seen.standings(before).get(0);
    JsonNode expected = window.whatIf(toNextPosition(before, first));
    long broken = Seen.breachCount(expected) - Seen.breachCount(before);

    tabTo(page, first.operationId());
    page.keyboard().press("Enter");
    assertThat(page.locator(".operation-panel h2")).hasText(first.title());
    assertThat(page.locator(".panel-figures")).isVisible();
    page.keyboard().press("Escape");
    assertThat(page.locator(".operation-panel")).hasCount(0);

    page.keyboard().press("Shift+ArrowRight");
    Locator line = page.locator(".try-line");
    assertThat(line).containsText("cycle " + Seen.cycle(expected) + " s");
    assertThat(line)
        .containsText(
            broken > 0 ? "breaks rules in " + broken + " place" : "keeps every rule that held");
    assertThat(page.locator(".head-figures .big").first()).hasText(Seen.cycle(expected));
    assertThat(block(page, first.operationId())).isFocused();
    assertThat(window.layout()).isEqualTo(before);

    page.keyboard().press("Escape");
    assertThat(line).hasCount(0);
    assertThat(page.locator(".head-figures .big").first()).hasText(Seen.cycle(before));
    assertThat(block(page, first.operationId())).isFocused();
    page.keyboard().press("Shift+ArrowRight");
    assertThat(line).containsText("cycle " + Seen.cycle(expected) + " s");
  }

  @Test
  void aKeptMoveIsUndoneAndRedone() {
    Page page = window.wall(ColorScheme.LIGHT);
    JsonNode before = window.layout();
    Standing first = Seen.standings(before).get(0);
    Map<String, Object> move = toNextPosition(before, first);
    JsonNode expected = window.whatIf(move);

    tabTo(page, first.operationId());
    page.keyboard().press("Shift+ArrowRight");
    assertThat(button(page, "Keep")).isEnabled();
    button(page, "Keep").focus();
    page.keyboard().press("Enter");
    assertThat(page.locator(".try-line")).hasCount(0);
    assertThat(block(page, first.operationId())).isFocused();
    JsonNode kept = window.layout();
    assertThat(kept.get("revision").asInt()).isGreaterThan(before.get("revision").asInt());
    assertThat(Seen.standing(kept, first.operationId()).position()).isEqualTo(move.get("position"));
    assertThat(Seen.cycle(kept)).isEqualTo(Seen.cycle(expected));

    button(page, "Undo").click();
    assertThat(slideOf(page, first)).isVisible();
    assertThat(window.layout().get("layoutId")).isEqualTo(before.get("layoutId"));
    button(page, "Redo").click();
    assertThat(slideOf(page, first)).hasCount(0);
    button(page, "Undo").click();
    assertThat(slideOf(page, first)).isVisible();
  }

  @Test
  void arrowsGoFromBlockToBlockAndShiftWithSToTheOtherSlide() {
    Page page = window.wall(ColorScheme.LIGHT);
    JsonNode layout = window.layout();
    Standing first = Seen.standings(layout).get(0);
    Standing beside =
        Seen.standings(layout).stream()
            .filter(standing -> standing.position() != first.position())
            .findFirst()
            .orElseThrow();
    tabTo(page, first.operationId());
    page.keyboard().press("ArrowRight");
    assertThat(focusedIn(page, beside.position())).hasCount(1);
    page.keyboard().press("ArrowLeft");
    assertThat(focusedIn(page, first.position())).hasCount(1);

    block(page, first.operationId()).focus();
    String other = slideBeside(layout.get("columns").get(first.columnCount() - 1), first);
    JsonNode expected = window.whatIf(Map.of("operationId", first.operationId(), "slideId", other));
    page.keyboard().press("Shift+S");
    assertThat(page.locator(".try-line")).containsText("cycle " + Seen.cycle(expected) + " s");
    assertThat(slideOf(page, first)).hasCount(0);
    page.keyboard().press("Escape");
    assertThat(slideOf(page, first)).isVisible();
  }

  @Test
  void aBlockIsDraggedToAnotherSlideAndPutBack() {
    Page page = window.wall(ColorScheme.LIGHT);
    JsonNode before = window.layout();
    Standing first = Seen.standings(before).get(0);
    String target =
        before.get("columns").get(first.columnCount()).get("lanes").get(0).get("slideId").asText();
    BoundingBox from = block(page, first.operationId()).boundingBox();
    BoundingBox to = page.locator("[data-slide='" + target + "']").boundingBox();
    page.mouse().move(from.x + from.width / 2, from.y + 4);
    page.mouse().down();
    page.mouse().move(from.x + from.width / 2 + 12, from.y + 12);
    page.mouse().move(to.x + to.width / 2, to.y + to.height - 40);
    assertThat(page.locator(".wall-ghost")).isVisible();
    page.mouse().up();
    assertThat(page.locator(".wall-ghost")).hasCount(0);
    assertThat(page.locator(".try-line .figure")).containsText("cycle");
    assertThat(
            page.locator(
                "[data-slide='" + target + "'] [data-operation='" + first.operationId() + "']"))
        .hasCount(1);
    assertThat(page.locator(".operation-panel")).hasCount(0);
    button(page, "Put back").click();
    assertThat(slideOf(page, first)).isVisible();
    assertThat(window.layout()).isEqualTo(before);
  }

  @Test
  void aPinIsKeptInTheInquiryAndTakenOut() {
    Page page = window.wall(ColorScheme.LIGHT);
    Standing first = Seen.standings(window.layout()).get(0);
    block(page, first.operationId()).click();
    Locator pin = button(page, "position");
    pin.click();
    assertThat(pin).hasAttribute("aria-pressed", "true");
    assertThat(block(page, first.operationId()).locator(".block-pin")).hasCount(1);
    JsonNode pins = window.layout().get("pins");
    assertThat(pins).hasSize(1);
    assertThat(pins.get(0).get("operationId").asText()).isEqualTo(first.operationId());
    assertThat(pins.get(0).get("position").asInt()).isEqualTo(first.position());
    pin.click();
    assertThat(pin).hasAttribute("aria-pressed", "false");
    assertThat(block(page, first.operationId()).locator(".block-pin")).hasCount(0);
    assertThat(window.layout().get("pins")).isEmpty();
  }

  private static Locator focusedIn(Page page, int position) {
    return page.locator("[data-position='" + position + "'] .block:focus");
  }

  private static String slideBeside(JsonNode column, Standing standing) {
    List<String> slides = column.get("lanes").findValuesAsText("slideId");
    assertThat(slides).hasSizeGreaterThan(1);
    return slides.get((slides.indexOf(standing.slideId()) + 1) % slides.size());
  }

  private static Map<String, Object> toNextPosition(JsonNode layout, Standing standing) {
    JsonNode next = layout.get("columns").get(standing.columnCount());
    return Map.of("operationId", standing.operationId(), "position", next.get("position").asInt());
  }

  private static Locator slideOf(Page page, Standing standing) {
    return page.locator("[data-slide='" + standing.slideId() + "']")
        .locator("[data-operation='" + standing.operationId() + "']");
  }

  /** Tabs on from the last control before the wall, as a person without a mouse does. */
  private static void tabTo(Page page, String operationId) {
    button(page, "Plan again …").focus();
    page.keyboard().press("Tab");
    assertThat(block(page, operationId)).isFocused();
  }
}
