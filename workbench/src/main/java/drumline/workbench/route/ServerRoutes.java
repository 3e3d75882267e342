package drumline.workbench.route;

import drumline.app.ask.ShowSchema;
import drumline.app.desk.Desk;
import drumline.workbench.door.Door;
import drumline.workbench.log.Counters;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;

/** Server and libraries. */
public final class ServerRoutes {
  private final Desk desk;
  private final String version;
  private final Counters counters;

  /** The routes of a desk. */
  public ServerRoutes(Desk desk, String version, Counters counters) {
    this.desk = desk;
    this.version = version;
    this.counters = counters;
  }

  /** Adds the routes. */
  public void add(RoutesConfig routes) {
    routes.get("/health", this::health);
    routes.get(
        "/metrics",
        ctx -> ctx.contentType("text/plain").result(counters.text(desk.jobs().runningCount())));
    routes.get("/drawing.css", ctx -> ctx.contentType("text/css").result(Desk.drawingStyle()));
    routes.get("/api/v1/about", this::about);
    routes.get(
        "/api/v1/openapi.yaml",
        ctx -> ctx.contentType("application/yaml").result(PageFiles.contract()));
    routes.get(
        "/api/v1/schema/inquiry",
        ctx ->
            ctx.contentType("application/schema+json")
                .result(ShowSchema.text(ShowSchema.Form.INQUIRY)));
    routes.get(
        "/api/v1/libraries/materials",
        ctx -> ctx.json(Map.of("materials", desk.libraries().materials())));
    routes.get(
        "/api/v1/libraries/tools", ctx -> ctx.json(Map.of("tools", desk.libraries().tools())));
    routes.get(
        "/api/v1/libraries/machines",
        ctx -> ctx.json(Map.of("machines", desk.libraries().machines())));
  }

  private void health(Context ctx) {
    ctx.json(
        Map.of(
            "status",
            "works",
            "version",
            version,
            "inquiriesCount",
            desk.inquiries().openCount(),
            "runningJobsCount",
            desk.jobs().runningCount(),
            "upS",
            counters.upS()));
  }

  private void about(Context ctx) {
    ctx.json(
        Map.of(
            "name",
            "Drumline",
            "version",
            version,
            "caution",
            Desk.caution(),
            "foot",
            Desk.foot(),
            "user",
            desk.settings().user(),
            "engines",
            Map.of("step", "there", "runOff", "missing", "pdf", "missing", "xlsx", "missing"),
            "mostParallelJobsCount",
            desk.settings().mostParallelJobsCount(),
            "mostUploadKb",
            Door.MOST_BYTES / 1024));
  }
}
