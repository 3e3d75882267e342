package drumline.workbench.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import drumline.workbench.TestBench;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Everybody can use it: the rules of WCAG 2.2 A and AA as axe-core 4.11 checks them, on every place
 * in light and dark.
 */
class AccessTest {
  private static final List<String> WCAG =
      List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice");
  private static final Map<String, String> READY =
      Map.of(
          "print", ".part-drawing svg",
          "route", ".order-graph",
          "layout", "cycle-wall",
          "money", ".plot canvas",
          "paper", "iframe",
          "run-off", ".state");

  @TempDir static Path folder;
  private static TestBench bench;
  private static BrowserWindow browser;
  private static String id;

  @BeforeAll
  static void plan() {
    browser = new BrowserWindow();
    bench = new TestBench(folder);
    id = bench.example("valve-seat-body.yaml");
    bench.planned(id, 1);
  }

  @AfterAll
  static void stop() {
    if (bench != null) {
      bench.close();
      browser.close();
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = ColorScheme.class,
      names = {"LIGHT", "DARK"})
  void everyLeafKeepsTheRules(ColorScheme scheme) {
    Page page = browser.open(bench.address(), "/", scheme);
    assertThat(page.locator(".inquiries tbody tr")).hasCount(1);
    assertThat(broken(page)).as("list, %s", scheme).isEmpty();
    for (Map.Entry<String, String> leaf : READY.entrySet()) {
      page.navigate(bench.address().resolve("/inquiries/" + id + "/" + leaf.getKey()).toString());
      assertThat(page.locator(leaf.getValue()).first()).isVisible();
      assertThat(broken(page)).as("%s, %s", leaf.getKey(), scheme).isEmpty();
    }
    page.navigate(bench.address().resolve("/inquiries/" + id + "/print").toString());
    page.locator(".element-pick").first().click();
    assertThat(broken(page)).as("chosen element, %s", scheme).isEmpty();
    page.locator("#tab-inquiry").click();
    assertThat(broken(page)).as("inquiry, %s", scheme).isEmpty();
    page.locator("#tab-text").click();
    page.getByText("Revisions", new Page.GetByTextOptions().setExact(true)).first().click();
    assertThat(page.locator(".revisions")).isVisible();
    assertThat(broken(page)).as("text and revisions, %s", scheme).isEmpty();
    assertThat(browser.faults()).isEmpty();
  }

  private static List<String> broken(Page page) {
    return new AxeBuilder(page)
        .withTags(WCAG).exclude("iframe").analyze().getViolations().stream()
            .map(AccessTest::words)
            .toList();
  }

  private static String words(Rule rule) {
    return rule.getId()
        + ": "
        + rule.getHelp()
        + rule.getNodes().stream().limit(4).map(node -> "\n  " + node.getHtml()).toList();
  }
}
