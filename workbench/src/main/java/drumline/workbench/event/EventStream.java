package drumline.workbench.event;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.http.sse.SseClient;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * Events on their way to one page. Whoever sends never waits for the page: events are kept until
 * the stream's own thread has sent them; of what only the latest counts, only the latest is kept.
 */
public final class EventStream {
  private static final long BEAT_MS = 15_000;
  private static final long PAUSE_MS = 200;
  private static final int MOST_WAITING = 500;
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final SseClient client;
  private final Map<String, Event> waiting = new LinkedHashMap<>();
  private final List<Runnable> closers = new ArrayList<>();
  private int count;
  private boolean isEnding;
  private boolean isClosed;

  private record Event(String name, Object content) {}

  EventStream(SseClient client) {
    this.client = client;
  }

  /** Sends an event; a page that does not read any more is let go. */
  public synchronized void send(String name, Object content) {
    if (waiting.size() >= MOST_WAITING) {
      isEnding = true;
    } else {
      waiting.put("#" + count++, new Event(name, content));
    }
    notifyAll();
  }

  /** Sends an event in place of an earlier one with the same key that was not sent yet. */
  public synchronized void sendLatest(String name, String key, Object content) {
    waiting.put(key, new Event(name, content));
    notifyAll();
  }

  /** Ends the stream once everything is sent. */
  public synchronized void end() {
    isEnding = true;
    notifyAll();
  }

  /** What is done when the stream is over; at once if it is. */
  public void onClose(Runnable closer) {
    synchronized (this) {
      if (!isClosed) {
        closers.add(closer);
        return;
      }
    }
    closer.run();
  }

  /** Sends until the page is gone or the stream ends. */
  void run() {
    try {
      while (sendWaiting()) {
        Thread.sleep(PAUSE_MS);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } finally {
      close();
    }
  }

  private boolean sendWaiting() throws InterruptedException {
    List<Event> now = new ArrayList<>();
    boolean isLast;
    synchronized (this) {
      long untilNs = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(BEAT_MS);
      long leftMs = BEAT_MS;
      while (waiting.isEmpty() && !isEnding && leftMs > 0) {
        wait(leftMs);
        leftMs = TimeUnit.NANOSECONDS.toMillis(untilNs - System.nanoTime());
      }
      for (Iterator<Event> events = waiting.values().iterator(); events.hasNext(); ) {
        now.add(events.next());
        events.remove();
      }
      isLast = isEnding;
    }
    if (now.isEmpty()) {
      client.sendComment("still here");
    }
    for (Event event : now) {
      client.sendEvent(event.name(), text(event.content()));
    }
    return !isLast && !client.terminated();
  }

  private static String text(Object content) {
    try {
      return MAPPER.writeValueAsString(content);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("the event cannot be written as JSON", e);
    }
  }

  private void close() {
    List<Runnable> all;
    synchronized (this) {
      isClosed = true;
      all = List.copyOf(closers);
      closers.clear();
    }
    all.forEach(Runnable::run);
    client.close();
  }
}
