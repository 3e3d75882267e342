package drumline.workbench.door;

import io.javalin.http.Context;
import io.javalin.http.Handler;

/** Says to browsers that an answer is what it says it is, and for nobody else. */
public final class PageHeaders implements Handler {
  @Override
  public void handle(Context ctx) {
    ctx.header("X-Content-Type-Options", "nosniff");
    ctx.header("Referrer-Policy", "no-referrer");
    ctx.header("Cross-Origin-Resource-Policy", "same-origin");
    ctx.header("Cross-Origin-Opener-Policy", "same-origin");
    if (ctx.res().getHeader("Content-Security-Policy") == null) {
      ctx.header("Content-Security-Policy", "default-src 'none'; frame-ancestors 'none'");
    }
    if (ctx.res().getHeader("Cache-Control") == null) {
      ctx.header("Cache-Control", "no-store");
    }
  }
}
