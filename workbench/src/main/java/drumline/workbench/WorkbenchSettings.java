package drumline.workbench;

import drumline.app.shelf.DeskSettings;

/**
 * How a workbench is started.
 *
 * @param port port on the loopback address; 0 for any that is free
 * @param desk where inquiries are kept, and who works on them
 * @param version version of the program
 */
public record WorkbenchSettings(int port, DeskSettings desk, String version) {
  private static final int HIGHEST_PORT = 65_535;

  /**
   * Checks the port.
   *
   * @throws IllegalArgumentException if the port is outside its range
   */
  public WorkbenchSettings {
    if (port < 0 || port > HIGHEST_PORT) {
      throw new IllegalArgumentException("port: " + port + ", allowed: 0 to " + HIGHEST_PORT);
    }
  }
}
