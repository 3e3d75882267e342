package drumline.cli.screen;

import java.io.IOException;
import java.net.URI;

/** Opens pages in the user's browser. */
public final class Browser {
  private static final String OPENER = "xdg-open";

  private Browser() {}

  /** Opens a page; where no browser can be found, nothing happens: the address was printed. */
  public static void open(URI address) {
    ProcessBuilder opener = new ProcessBuilder(OPENER, address.toString());
    opener.redirectOutput(ProcessBuilder.Redirect.DISCARD);
    opener.redirectError(ProcessBuilder.Redirect.DISCARD);
    try {
      opener.start();
    } catch (IOException e) {
      System.getLogger(Browser.class.getName()).log(System.Logger.Level.DEBUG, "no browser", e);
    }
  }
}
