package drumline.workbench.route;

import drumline.app.desk.Desk;
import drumline.app.desk.Papers.PaperFile;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.ZoneId;

/** The leaves of an inquiry. */
public final class LeafRoutes {
  private static final String INQUIRY = "/api/v1/inquiries/{id}";

  /** A sheet may style itself, and nothing else. */
  private static final String SHEET_POLICY =
      "default-src 'none'; style-src 'unsafe-inline'; img-src data:; frame-ancestors 'self';"
          + " sandbox allow-same-origin allow-modals";

  private final Desk desk;

  /** The routes of a desk. */
  public LeafRoutes(Desk desk) {
    this.desk = desk;
  }

  /** Adds the routes. */
  public void add(RoutesConfig routes) {
    routes.get(
        INQUIRY + "/print",
        ctx -> ctx.json(desk.leaves().print(Asked.id(ctx), Asked.query(ctx, "units"))));
    routes.get(INQUIRY + "/triage", ctx -> ctx.json(desk.leaves().triage(Asked.id(ctx))));
    routes.get(
        INQUIRY + "/route",
        ctx -> ctx.json(desk.leaves().route(Asked.id(ctx), Asked.query(ctx, "machine"))));
    routes.get(INQUIRY + "/money", ctx -> ctx.json(desk.leaves().money(Asked.id(ctx))));
    routes.get(INQUIRY + "/run-off", ctx -> ctx.json(desk.leaves().runOff(Asked.id(ctx))));
    routes.get(
        INQUIRY + "/paper",
        ctx ->
            ctx.json(
                desk.papers()
                    .list(Asked.id(ctx), INQUIRY.replace("{id}", Asked.id(ctx)) + "/paper/")));
    routes.get(INQUIRY + "/paper/{name}", this::sheet);
  }

  private void sheet(Context ctx) {
    LocalDate today = LocalDate.now(ZoneId.systemDefault());
    PaperFile file = desk.papers().file(Asked.id(ctx), ctx.pathParam("name"), today);
    boolean isDownload = Asked.query(ctx, "as", "preview", "download").equals("download");
    ctx.header("Content-Security-Policy", SHEET_POLICY)
        .header(
            "Content-Disposition",
            (isDownload ? "attachment" : "inline") + "; filename=\"" + file.name() + "\"")
        .contentType(file.mediaType())
        .result(file.text());
  }
}
