package drumline.cli;

import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** Name and version as the build wrote them, for {@code drumline --version}. */
final class BuildVersion implements IVersionProvider {

  @Override
  public String[] getVersion() throws IOException {
    return new String[] {"drumline " + number()};
  }

  /** The version alone. */
  static String number() throws IOException {
    Properties build = new Properties();
    try (InputStream file = BuildVersion.class.getResourceAsStream("version.properties")) {
      if (file == null) {
        throw new IOException("version.properties is missing beside " + BuildVersion.class);
      }
      build.load(file);
    }
    return build.getProperty("version");
  }
}
