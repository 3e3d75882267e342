package drumline.workbench.route;

import drumline.app.answer.DeskRefusal;
import drumline.workbench.route.PageFiles.PageFile;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;

/** The page and what it is built on. */
public final class PageRoutes {
  private static final String INDEX = "index.html";

  private final PageFiles files = new PageFiles();

  /** Adds the routes. */
  public void add(RoutesConfig routes) {
    routes.get("/", this::index);
    routes.get("/inquiries", this::index);
    routes.get("/inquiries/{id}", this::index);
    routes.get("/inquiries/{id}/{leaf}", this::index);
    routes.get("/page/<name>", ctx -> file(ctx, "page"));
    routes.get("/vendor/<name>", ctx -> file(ctx, "vendor"));
  }

  private void index(Context ctx) {
    PageFile page =
        files.find("page", INDEX).orElseThrow(() -> new IllegalStateException("no " + INDEX));
    ctx.header("Content-Security-Policy", PageFiles.policy(page));
    send(ctx, page);
  }

  private void file(Context ctx, String folder) {
    String name = ctx.pathParam("name");
    PageFile file =
        files
            .find(folder, name)
            .orElseThrow(
                () -> DeskRefusal.of(DeskRefusal.Kind.MISSING, "There is no file " + name + "."));
    send(ctx, file);
  }

  private static void send(Context ctx, PageFile file) {
    ctx.header("Cache-Control", "no-cache").header("ETag", file.mark());
    if (file.mark().equals(ctx.header("If-None-Match"))) {
      ctx.status(HttpStatus.NOT_MODIFIED);
      return;
    }
    ctx.contentType(file.mediaType()).result(file.content());
  }
}
