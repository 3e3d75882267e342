package drumline.workbench.door;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Lets in whom the workbench is for: requests to its own loopback name (so that a foreign name that
 * points here is of no use) and, from a browser, only those of its own page.
 *
 * <p>As Fetch Metadata of the W3C and RFC 9110 have it, from memory.
 */
public final class Door implements Handler {
  /** Most bytes of a request. */
  public static final int MOST_BYTES = 10 * 1024 * 1024;

  private static final Set<HandlerType> READING = Set.of(HandlerType.GET, HandlerType.HEAD);
  private static final Set<String> OWN_SITES = Set.of("same-origin", "none");

  @Override
  public void handle(Context ctx) {
    int port = ctx.req().getLocalPort();
    if (!isOwn(ctx.header("Host"), port)) {
      refuse(HttpStatus.MISDIRECTED_REQUEST, "foreign-host", "This is not my name.");
      return;
    }
    String origin = ctx.header("Origin");
    if (origin != null && !isOwnOrigin(origin, port)) {
      refuse(HttpStatus.FORBIDDEN, "foreign-origin", "Another page asks.");
      return;
    }
    if (isForeign(ctx)) {
      refuse(HttpStatus.FORBIDDEN, "foreign-site", "Another page asks.");
      return;
    }
    checkBody(ctx);
  }

  private static void checkBody(Context ctx) {
    if (READING.contains(ctx.method())) {
      return;
    }
    long length = ctx.req().getContentLengthLong();
    if (length > MOST_BYTES) {
      DroppedBody.of(ctx);
      refuse(HttpStatus.CONTENT_TOO_LARGE, "too-large", "Allowed are 10 MB.");
      return;
    }
    String type = ctx.contentType();
    boolean isFile = ctx.path().startsWith("/api/v1/import/");
    boolean isJson = type != null && type.split(";", 2)[0].strip().equals("application/json");
    boolean isEmpty = length == 0 && ctx.header("Transfer-Encoding") == null;
    if (!isFile && !isJson && !isEmpty) {
      refuse(HttpStatus.UNSUPPORTED_MEDIA_TYPE, "content-type", "Allowed is application/json.");
    }
  }

  /** A link from elsewhere may open the page; nothing else may come from elsewhere. */
  private static boolean isForeign(Context ctx) {
    String site = ctx.header("Sec-Fetch-Site");
    if (site == null || OWN_SITES.contains(site)) {
      return false;
    }
    boolean opensThePage =
        ctx.method().equals(HandlerType.GET)
            && "navigate".equals(ctx.header("Sec-Fetch-Mode"))
            && "document".equals(ctx.header("Sec-Fetch-Dest"))
            && !ctx.path().startsWith("/api/");
    return !opensThePage;
  }

  private static boolean isOwn(@Nullable String host, int port) {
    return host != null
        && Set.of("localhost:" + port, "127.0.0.1:" + port, "[::1]:" + port).contains(host);
  }

  private static boolean isOwnOrigin(String origin, int port) {
    return origin.startsWith("http://") && isOwn(origin.substring("http://".length()), port);
  }

  private static void refuse(HttpStatus status, String kind, String detail) {
    throw new DoorRefusal(status, kind, detail);
  }
}
