package drumline.workbench.log;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;

/**
 * Counters in the Prometheus text format: requests by route, method and status, their time, memory,
 * jobs.
 */
public final class Counters {
  private static final double[] BOUNDS_S = {0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5};

  private final long startNs = System.nanoTime();
  private final Map<String, Times> times = new TreeMap<>();
  private final Map<String, Long> counts = new TreeMap<>();

  /** Times of one route. */
  private static final class Times {
    private final long[] within = new long[BOUNDS_S.length];
    private long count;
    private double sumS;

    void add(double valueS) {
      count++;
      sumS += valueS;
      for (int i = 0; i < BOUNDS_S.length; i++) {
        within[i] += valueS <= BOUNDS_S[i] ? 1 : 0;
      }
    }
  }

  /** Counts a request. */
  synchronized void add(String method, String route, int status, double valueS) {
    String labels = "method=\"" + method + "\",route=\"" + route + "\"";
    counts.merge(labels + ",status=\"" + status + "\"", 1L, Long::sum);
    times.computeIfAbsent(labels, key -> new Times()).add(valueS);
  }

  /** Time since the start. */
  public double upS() {
    return TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - startNs) / 1000.0;
  }

  /** All counters as text. */
  public synchronized String text(int runningJobsCount) {
    StringBuilder text = new StringBuilder();
    text.append("# TYPE drumline_requests_total counter\n");
    counts.forEach((labels, n) -> line(text, "drumline_requests_total{" + labels + "}", n));
    text.append("# TYPE drumline_request_seconds histogram\n");
    times.forEach((labels, one) -> histogram(text, labels, one));
    Runtime runtime = Runtime.getRuntime();
    text.append("# TYPE drumline_jobs_running gauge\n");
    line(text, "drumline_jobs_running", runningJobsCount);
    text.append("# TYPE drumline_memory_bytes gauge\n");
    line(text, "drumline_memory_bytes", runtime.totalMemory() - runtime.freeMemory());
    text.append("# TYPE drumline_up_seconds counter\n");
    text.append(String.format(Locale.ROOT, "drumline_up_seconds %.3f%n", upS()));
    return text.toString();
  }

  private static void histogram(StringBuilder text, String labels, Times one) {
    String name = "drumline_request_seconds";
    for (int i = 0; i < BOUNDS_S.length; i++) {
      line(text, name + "_bucket{" + labels + ",le=\"" + BOUNDS_S[i] + "\"}", one.within[i]);
    }
    line(text, name + "_bucket{" + labels + ",le=\"+Inf\"}", one.count);
    text.append(String.format(Locale.ROOT, "%s_sum{%s} %.6f%n", name, labels, one.sumS));
    line(text, name + "_count{" + labels + "}", one.count);
  }

  private static void line(StringBuilder text, String name, long value) {
    text.append(name).append(' ').append(value).append('\n');
  }
}
