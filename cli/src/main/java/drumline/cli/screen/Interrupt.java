package drumline.cli.screen;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Turns Ctrl-C into a wish to end with the best so far: the search stops, and the program ends once
 * the result is written, or after a while.
 */
public final class Interrupt implements AutoCloseable {
  private static final long PATIENCE_S = 20;

  private final CountDownLatch written = new CountDownLatch(1);
  private final Thread hook = new Thread(this::wish, "interrupt");
  private volatile boolean wished;

  private Interrupt() {}

  /** Listens from now on. */
  public static Interrupt listen() {
    Interrupt interrupt = new Interrupt();
    Runtime.getRuntime().addShutdownHook(interrupt.hook);
    return interrupt;
  }

  /** Whether Ctrl-C was pressed. */
  public boolean isCancelled() {
    return wished;
  }

  /** Everything is written: the program may end. */
  @Override
  public void close() {
    written.countDown();
    if (!wished) {
      Runtime.getRuntime().removeShutdownHook(hook);
    }
  }

  private void wish() {
    wished = true;
    try {
      if (!written.await(PATIENCE_S, TimeUnit.SECONDS)) {
        System.err.println("Ended before the best so far could be written.");
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
