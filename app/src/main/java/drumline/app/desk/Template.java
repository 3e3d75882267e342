package drumline.app.desk;

import drumline.app.answer.DeskRefusal;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The text that a new inquiry begins with: a plain bush to be changed into the piece asked for. */
final class Template {
  private Template() {}

  /** The template in a unit system, metric or inch. */
  static String text(String units) {
    String name = "template-" + units + ".yaml";
    try (InputStream in = Template.class.getResourceAsStream(name)) {
      if (in == null) {
        throw DeskRefusal.of(
            DeskRefusal.Kind.REFUSED, "units: " + units + ", allowed: metric, inch");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
