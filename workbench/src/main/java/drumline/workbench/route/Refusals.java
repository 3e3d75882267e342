package drumline.workbench.route;

import com.fasterxml.jackson.core.JsonProcessingException;
import drumline.app.answer.DeskRefusal;
import drumline.workbench.door.DoorRefusal;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import java.util.LinkedHashMap;
import java.util.Map;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Turns whatever goes wrong into problem details (RFC 9457) without a word about the inside. */
public final class Refusals {
  private static final Logger LOG = LoggerFactory.getLogger(Refusals.class);
  private static final String TYPE = "urn:drumline:problem:";

  private Refusals() {}

  /** Adds the handlers. */
  public static void add(RoutesConfig routes) {
    routes.exception(DeskRefusal.class, (e, ctx) -> desk(ctx, e));
    routes.exception(
        DoorRefusal.class,
        (e, ctx) ->
            answer(ctx, e.status(), e.kind(), title(e.status()), String.valueOf(e.getMessage())));
    routes.exception(
        HttpResponseException.class,
        (e, ctx) -> {
          HttpStatus status = HttpStatus.forStatus(e.getStatus());
          answer(ctx, status, word(status), title(status), title(status));
        });
    routes.exception(Exception.class, (e, ctx) -> fault(ctx, e));
  }

  private static void fault(Context ctx, Exception e) {
    LOG.atError().setCause(e).addKeyValue("path", ctx.path()).log("a request failed");
    answer(
        ctx,
        HttpStatus.INTERNAL_SERVER_ERROR,
        "fault",
        "The program failed",
        "Nothing was changed by this request unless it says so; the log says where it failed.");
  }

  private static void desk(Context ctx, DeskRefusal refusal) {
    switch (refusal.kind()) {
      case MISSING ->
          desk(ctx, HttpStatus.NOT_FOUND, "not-found", "There is no such thing", refusal);
      case STALE ->
          desk(ctx, HttpStatus.CONFLICT, "stale", "Somebody changed this inquiry since", refusal);
      case REFUSED ->
          desk(ctx, HttpStatus.UNPROCESSABLE_CONTENT, "refused", "This cannot be done", refusal);
      case BUSY -> desk(ctx, HttpStatus.TOO_MANY_REQUESTS, "busy", "Too much at once", refusal);
      case NOT_YET -> desk(ctx, HttpStatus.NOT_IMPLEMENTED, "not-yet", "Not there yet", refusal);
    }
  }

  private static void desk(
      Context ctx, HttpStatus status, String kind, String title, DeskRefusal refusal) {
    Map<String, Object> body = body(status, kind, title, String.valueOf(refusal.getMessage()));
    DeskRefusal.Present present = refusal.present();
    if (present != null) {
      body.put("presentRevision", present.revision());
      body.put("changedBy", present.by());
      body.put("changedAt", present.at());
    }
    if (!refusal.problems().isEmpty()) {
      body.put("problems", refusal.problems());
    }
    write(ctx, status, body);
  }

  private static void answer(
      Context ctx, HttpStatus status, String kind, String title, String detail) {
    write(ctx, status, body(status, kind, title, detail));
  }

  private static Map<String, Object> body(
      HttpStatus status, String kind, String title, String detail) {
    Map<String, Object> body = new LinkedHashMap<>();
    body.put("type", TYPE + kind);
    body.put("title", title);
    body.put("status", status.getCode());
    body.put("detail", detail);
    return body;
  }

  private static void write(Context ctx, HttpStatus status, Map<String, Object> body) {
    try {
      ctx.status(status)
          .contentType("application/problem+json")
          .result(Asked.MAPPER.writeValueAsString(body));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("the problem cannot be written as JSON", e);
    }
  }

  private static String title(HttpStatus status) {
    return status.getMessage();
  }

  private static String word(HttpStatus status) {
    return status.getMessage().toLowerCase(java.util.Locale.ROOT).replace(' ', '-');
  }
}
