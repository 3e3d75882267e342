package drumline.workbench.log;

import io.javalin.http.Context;
import io.javalin.http.RequestLogger;
import io.javalin.router.Endpoint;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** One line of the log for each request, and its counters. */
public final class RequestLog implements RequestLogger {
  private static final Logger LOG = LoggerFactory.getLogger(RequestLog.class);

  private final Counters counters;

  /** A log that counts too. */
  public RequestLog(Counters counters) {
    this.counters = counters;
  }

  @Override
  public void handle(Context ctx, Float executionTimeMs) {
    Endpoint last = ctx.endpoints().lastHttpEndpoint();
    String route = last == null ? "none" : last.path;
    String method = ctx.method().name();
    counters.add(method, route, ctx.statusCode(), executionTimeMs / 1000.0);
    LOG.atInfo()
        .addKeyValue("method", method)
        .addKeyValue("path", ctx.path())
        .addKeyValue("status", ctx.statusCode())
        .addKeyValue(
            "tookMs", BigDecimal.valueOf(executionTimeMs).setScale(1, RoundingMode.HALF_UP))
        .log("request");
  }
}
