package drumline.workbench.event;

import drumline.app.answer.DeskRefusal;
import drumline.workbench.door.DoorRefusal;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.sse.SseHandler;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;

/** The event streams that are open; each has a thread of its own. */
public final class EventStreams implements AutoCloseable {
  private static final int MOST = 100;
  private static final String MEDIA_TYPE = "text/event-stream";

  private final Set<EventStream> open = ConcurrentHashMap.newKeySet();

  /**
   * Answers a request with a stream.
   *
   * @param begin registers the stream with whatever it tells of
   */
  public void open(Context ctx, Consumer<EventStream> begin) {
    String accept = ctx.header("Accept");
    if (accept == null || !accept.contains(MEDIA_TYPE)) {
      throw new DoorRefusal(
          HttpStatus.NOT_ACCEPTABLE, "not-acceptable", "Allowed is Accept: " + MEDIA_TYPE + ".");
    }
    if (open.size() >= MOST) {
      throw DeskRefusal.of(DeskRefusal.Kind.BUSY, MOST + " streams are open already.");
    }
    new SseHandler(
            client -> {
              client.keepAlive();
              EventStream stream = new EventStream(client);
              open.add(stream);
              stream.onClose(() -> open.remove(stream));
              begin.accept(stream);
              Thread thread = new Thread(stream::run, "events");
              thread.setDaemon(true);
              thread.start();
            })
        .handle(ctx);
  }

  /** Ends all. */
  @Override
  public void close() {
    open.forEach(EventStream::end);
  }
}
