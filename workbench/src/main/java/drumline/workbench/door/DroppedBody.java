package drumline.workbench.door;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;

/**
 * A body that is refused is read to its end all the same, up to a limit: a browser that is still
 * sending when the connection closes never sees why.
 */
public final class DroppedBody {
  private static final int MOST_DROPPED_BYTES = 64 * 1024 * 1024;

  private DroppedBody() {}

  /** Reads and forgets what is left of a request's body; a connection that breaks is no matter. */
  public static void of(Context ctx) {
    byte[] part = new byte[64 * 1024];
    try {
      InputStream body = ctx.req().getInputStream();
      int left = MOST_DROPPED_BYTES;
      int read = body.read(part);
      while (read > 0 && left > 0) {
        left -= read;
        read = body.read(part);
      }
    } catch (IOException e) {
      ctx.header("Connection", "close");
    }
  }
}
