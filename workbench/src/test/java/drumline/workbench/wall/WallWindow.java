package drumline.workbench.wall;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import drumline.workbench.TestBench;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.junit.jupiter.api.Assumptions;

/** A browser on the layout leaf of a planned example, with the workbench that serves it. */
final class WallWindow implements AutoCloseable {
  private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
  private static final List<String> QUIET =
      List.of(
          "--no-sandbox",
          "--disable-gpu",
          "--disable-quic",
          "--no-first-run",
          "--disable-background-networking",
          "--disable-component-update",
          "--disable-sync");
  private static final List<String> WCAG =
      List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice");
  private static final double PATIENCE_MS = 30_000;
  private static final double PLANNING_S = 1;

  private final TestBench bench;
  private final String id;
  private final Playwright playwright;
  private final Browser browser;
  private final List<BrowserContext> contexts = new ArrayList<>();
  private final ConcurrentLinkedQueue<String> faults = new ConcurrentLinkedQueue<>();

  /** Plans the example and starts the browser; skips the test where there is none. */
  WallWindow(Path folder) {
    Assumptions.assumeTrue(
        Files.isExecutable(CHROMIUM), "skipped: the page's tests need chromium at " + CHROMIUM);
    PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_MS);
    bench = new TestBench(folder);
    id = bench.example("valve-seat-body.yaml");
    bench.planned(id, PLANNING_S);
    playwright =
        Playwright.create(
            new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    browser =
        playwright
            .chromium()
            .launch(
                new BrowserType.LaunchOptions()
                    .setHeadless(true)
                    .setExecutablePath(CHROMIUM)
                    .setArgs(QUIET));
  }

  /** A new window on the wall, 1440 by 1100, with its blocks drawn. */
  Page wall(ColorScheme scheme) {
    BrowserContext context =
        browser.newContext(
            new Browser.NewContextOptions().setViewportSize(1440, 1100).setColorScheme(scheme));
    contexts.add(context);
    context.setDefaultTimeout(PATIENCE_MS);
    Page page = context.newPage();
    page.onPageError(error -> faults.add("page error: " + error));
    page.onConsoleMessage(
        message -> {
          if (message.type().equals("error")) {
            faults.add(message.text() + " at " + message.location());
          }
        });
    page.navigate(bench.address().resolve("/inquiries/" + id + "/layout").toString());
    assertThat(page.locator(".block").first()).isVisible();
    return page;
  }

  /** The present layout as the server tells it. */
  JsonNode layout() {
    return bench.get(path("layout")).json();
  }

  /** What a move would do, as the server tells it. */
  JsonNode whatIf(Map<String, Object> move) {
    return bench.post(path("what-if"), Map.of("moves", List.of(move))).json();
  }

  /** Stored layouts, newest first. */
  JsonNode layouts() {
    return bench.get(path("layouts")).json().get("layouts");
  }

  private String path(String rest) {
    return "/api/v1/inquiries/" + id + "/" + rest;
  }

  /** The block of an operation. */
  static Locator block(Page page, String operationId) {
    return page.locator(".block[data-operation='" + operationId + "']");
  }

  /** A button by its words. */
  static Locator button(Page page, String words) {
    return page.getByRole(
        AriaRole.BUTTON, new Page.GetByRoleOptions().setName(words).setExact(true));
  }

  /** Goes to another view of the layout. */
  static void view(Page page, String words) {
    page.getByRole(AriaRole.TAB, new Page.GetByRoleOptions().setName(words).setExact(true)).click();
  }

  /** The rules of WCAG 2.2 A and AA that the page breaks, as axe-core finds them. */
  static List<String> broken(Page page) {
    return new AxeBuilder(page)
        .withTags(WCAG).analyze().getViolations().stream().map(WallWindow::words).toList();
  }

  private static String words(Rule rule) {
    return rule.getId()
        + ": "
        + rule.getHelp()
        + rule.getNodes().stream().limit(4).map(node -> "\n  " + node.getHtml()).toList();
  }

  /** What the browser complained about so far: errors in scripts, refused styles, missing files. */
  List<String> faults() {
    return List.copyOf(faults);
  }

  @Override
  public void close() {
    contexts.forEach(BrowserContext::close);
    browser.close();
    playwright.close();
    bench.close();
  }
}
