package drumline.app.ask;

import drumline.intake.Schemas;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The forms of the program's files as JSON Schema, for editors. */
public final class ShowSchema {
  private ShowSchema() {}

  /** Files that have a form. */
  public enum Form {
    /** An inquiry. */
    INQUIRY,
    /** A library of materials. */
    MATERIALS,
    /** A library of tools. */
    TOOLS,
    /** A library of machines. */
    MACHINES,
    /** What a shop does otherwise. */
    PRACTICE,
    /** The plan that a study writes. */
    PLAN
  }

  /** The schema as text. */
  public static String text(Form form) {
    return switch (form) {
      case INQUIRY -> Schemas.text(Schemas.Kind.INQUIRY);
      case MATERIALS -> Schemas.text(Schemas.Kind.MATERIALS);
      case TOOLS -> Schemas.text(Schemas.Kind.TOOLS);
      case MACHINES -> Schemas.text(Schemas.Kind.MACHINES);
      case PRACTICE -> Schemas.text(Schemas.Kind.PRACTICE);
      case PLAN -> plan();
    };
  }

  private static String plan() {
    try (InputStream in =
        ShowSchema.class.getResourceAsStream("/drumline/app/json/plan.schema.json")) {
      if (in == null) {
        throw new IllegalStateException("plan.schema.json is missing");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
