package drumline.workbench.page;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.junit.jupiter.api.Assumptions;

/** A real browser on this machine, with windows onto a workbench. */
final class BrowserWindow implements AutoCloseable {
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
  private static final double PATIENCE_MS = 30_000;

  private final Playwright playwright;
  private final Browser browser;
  private final List<BrowserContext> contexts = new ArrayList<>();
  private final ConcurrentLinkedQueue<String> faults = new ConcurrentLinkedQueue<>();

  /** Starts the browser; skips the test where there is none. */
  BrowserWindow() {
    Assumptions.assumeTrue(
        Files.isExecutable(CHROMIUM), "skipped: the page's tests need chromium at " + CHROMIUM);
    PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_MS);
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

  /** A window of its own, with its own memory, 1280 by 800. */
  Page open(URI address, String path, ColorScheme scheme) {
    return open(address, path, scheme, 1280, 800);
  }

  /** A window of a size. */
  Page open(URI address, String path, ColorScheme scheme, int widthPx, int heightPx) {
    BrowserContext context =
        browser.newContext(
            new Browser.NewContextOptions()
                .setViewportSize(widthPx, heightPx)
                .setColorScheme(scheme));
    contexts.add(context);
    context.setDefaultTimeout(PATIENCE_MS);
    Page page = context.newPage();
    page.onPageError(error -> faults.add("page error: " + error));
    page.onConsoleMessage(
        message -> {
          if (message.type().equals("error") && !message.text().contains("status of 409")) {
            faults.add(message.text() + " at " + message.location());
          }
        });
    page.navigate(address.resolve(path).toString());
    return page;
  }

  /** A button by its words. */
  static Locator button(Page page, String words) {
    return page.getByRole(
        AriaRole.BUTTON, new Page.GetByRoleOptions().setName(words).setExact(true));
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
  }
}
