package drumline.store.measure;

import java.util.List;

/**
 * A run-off with its readings.
 *
 * @param entry its line in the list
 * @param measurements the readings in the order in which they were entered
 */
public record Runoff(RunoffEntry entry, List<Measurement> measurements) {
  public Runoff {
    measurements = List.copyOf(measurements);
  }
}
