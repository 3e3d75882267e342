package drumline.intake;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** JSON Schemas (draft 2020-12) of the files people write, for editors that complete and check. */
public final class Schemas {

  private Schemas() {}

  /** Files for which there is a schema. */
  public enum Kind {
    /** An inquiry. */
    INQUIRY("inquiry"),
    /** A library of materials. */
    MATERIALS("materials"),
    /** A library of tools. */
    TOOLS("tools"),
    /** A library of machines. */
    MACHINES("machines"),
    /** What a shop does otherwise. */
    PRACTICE("practice");

    private final String file;

    Kind(String file) {
      this.file = file + ".schema.json";
    }

    /** File name of the schema. */
    public String file() {
      return file;
    }
  }

  /** Text of a schema. */
  public static String text(Kind kind) {
    try (InputStream stream = Schemas.class.getResourceAsStream("schema/" + kind.file())) {
      if (stream == null) {
        throw new IllegalStateException("schema " + kind.file() + " is missing");
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("schema " + kind.file() + " cannot be read", e);
    }
  }
}
