package drumline.workbench.page;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import drumline.app.shelf.DeskSettings;
import drumline.workbench.Workbench;
import drumline.workbench.WorkbenchSettings;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageIO;

/**
 * Makes the guide's pictures: every leaf of a worked example, at 1280 and 1920 points, light and
 * dark. {@code docs/make-pictures} runs it.
 */
final class Screenshots {
  private static final double PATIENCE_MS = 120_000;
  private static final double SETTLING_MS = 4000;

  /** A picture: its name, the leaf, what must stand there, and what is done before. */
  private record Shot(String name, String leaf, String ready, String click) {}

  private static final List<Shot> SHOTS =
      List.of(
          new Shot("print", "print", ".fit-machines", "[data-id=seat]"),
          new Shot("route", "route", ".order-graph", ""),
          new Shot("layout", "layout", "cycle-wall", ""),
          new Shot("money", "money", ".plot canvas", ""),
          new Shot("paper", "paper", "iframe", ""));

  private Screenshots() {}

  /**
   * Makes the pictures.
   *
   * @param arguments folder of the pictures
   */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    Path pictures = Files.createDirectories(Path.of(arguments[0]));
    Path folder = Files.createTempDirectory("drumline-pictures");
    DeskSettings desk = new DeskSettings(folder, null, "m.keller", 1);
    try (Workbench workbench = Workbench.start(new WorkbenchSettings(0, desk, "0.1.0"));
        BrowserWindow browser = new BrowserWindow()) {
      workbench.layOutExamples();
      for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
        for (int widthPx : new int[] {1280, 1920}) {
          String end = "-" + widthPx + "-" + scheme.name().toLowerCase(Locale.ROOT);
          Page page =
              browser.open(workbench.address(), "/", scheme, widthPx, widthPx == 1280 ? 800 : 1080);
          String id = planned(page);
          save(page, pictures.resolve("list" + end + ".png"));
          putFirstStepsAway(page);
          for (Shot shot : SHOTS) {
            take(page, workbench.address() + "inquiries/" + id + "/", shot);
            save(page, pictures.resolve(shot.name() + end + ".png"));
          }
          page.close();
        }
      }
    }
  }

  /** Waits until all examples are planned; answers the valve seat body's address word. */
  private static String planned(Page page) {
    page.waitForFunction(
        "() => { const rows = [...document.querySelectorAll('.inquiries tbody tr')];"
            + " const open = rows.filter(row => /planning|–/.test(row.innerText)).length;"
            + " if (open) document.querySelector('inquiry-list').load();"
            + " return rows.length > 0 && open === 0; }",
        null,
        new Page.WaitForFunctionOptions().setTimeout(PATIENCE_MS).setPollingInterval(1000));
    return page.locator(".inquiry-name", new Page.LocatorOptions().setHasText("Valve seat body"))
        .getAttribute("href")
        .replaceAll("/inquiries/([^/]+)/.*", "$1");
  }

  private static void putFirstStepsAway(Page page) {
    if (page.locator(".steps button").count() > 0) {
      page.locator(".steps button").click();
    }
  }

  private static void take(Page page, String address, Shot shot) {
    page.navigate(address + shot.leaf());
    page.locator(shot.ready())
        .first()
        .waitFor(new Locator.WaitForOptions().setTimeout(PATIENCE_MS));
    if (!shot.click().isEmpty()) {
      page.locator(shot.click()).first().click();
    }
    page.waitForTimeout(SETTLING_MS);
  }

  private static void save(Page page, Path file) throws IOException {
    BufferedImage picture = ImageIO.read(new ByteArrayInputStream(page.screenshot()));
    ImageIO.write(FewColours.of(picture), "png", file.toFile());
  }
}
