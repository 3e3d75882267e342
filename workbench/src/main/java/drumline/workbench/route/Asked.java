package drumline.workbench.route;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import drumline.workbench.door.Door;
import drumline.workbench.door.DoorRefusal;
import drumline.workbench.door.DroppedBody;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;

/** What a request asks for. */
public final class Asked {
  /** Reads and writes JSON; unknown keys and missing numbers are mistakes. */
  public static final ObjectMapper MAPPER =
      JsonMapper.builder()
          .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
          .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
          .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
          .build();

  private Asked() {}

  /** The body as a record. */
  static <T> T body(Context ctx, Class<T> kind) {
    try {
      T read = MAPPER.readValue(bytes(ctx), kind);
      if (read == null) {
        throw wrong("The body is null; allowed: an object.");
      }
      return read;
    } catch (JsonMappingException e) {
      String where = e.getPath().isEmpty() ? "the body" : path(e);
      throw wrong(
          e instanceof UnrecognizedPropertyException unknown
              ? where + ": an unknown key, allowed: " + unknown.getKnownPropertyIds()
              : where + ": missing or of the wrong kind");
    } catch (JsonProcessingException e) {
      throw wrong("The body is not JSON: " + e.getOriginalMessage());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String path(JsonMappingException e) {
    StringBuilder path = new StringBuilder();
    for (JsonMappingException.Reference step : e.getPath()) {
      path.append(
          step.getFieldName() != null ? "." + step.getFieldName() : "[" + step.getIndex() + "]");
    }
    return path.substring(path.charAt(0) == '.' ? 1 : 0);
  }

  /** The body's bytes, also where their number was not said. */
  static byte[] bytes(Context ctx) {
    try {
      byte[] bytes = ctx.req().getInputStream().readNBytes(Door.MOST_BYTES + 1);
      if (bytes.length > Door.MOST_BYTES) {
        DroppedBody.of(ctx);
        throw new DoorRefusal(HttpStatus.CONTENT_TOO_LARGE, "too-large", "Allowed are 10 MB.");
      }
      return bytes;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A mistake in the request itself. */
  static DoorRefusal wrong(String detail) {
    return new DoorRefusal(HttpStatus.BAD_REQUEST, "bad-request", detail);
  }

  /** A query parameter, if it is there. */
  static Optional<String> query(Context ctx, String name) {
    return Optional.ofNullable(ctx.queryParam(name)).filter(value -> !value.isEmpty());
  }

  /** One of some words, or the usual one. */
  static String query(Context ctx, String name, String usual, String other) {
    String value = query(ctx, name).orElse(usual);
    if (!value.equals(usual) && !value.equals(other)) {
      throw wrong(name + ": " + value + ", allowed: " + usual + ", " + other);
    }
    return value;
  }

  /** The address word of the inquiry. */
  static String id(Context ctx) {
    return ctx.pathParam("id");
  }
}
