package drumline.cutting.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * One row of a data file: a worked example from outside, in its source's own units.
 *
 * @param id name of the example and of what is read from it
 * @param quantity which of our answers is compared
 * @param inputs given values by name, in the source's units
 * @param expected the source's answer
 * @param tolerance allowed difference, absolute
 * @param source where it stands
 * @param kind published, inputs (published inputs, answer by hand), derived, memory
 */
record PublishedCase(
    String id,
    String quantity,
    Map<String, Double> inputs,
    double expected,
    double tolerance,
    String source,
    String kind) {

  /** Rows of a file under /published: id,quantity,inputs,expected,tolerance,kind,source. */
  static Stream<PublishedCase> read(String name) {
    try (InputStream in = PublishedCase.class.getResourceAsStream("/published/" + name)) {
      assertThat(in).as(name).isNotNull();
      List<String> lines =
          new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)).lines().toList();
      return lines.stream()
          .filter(line -> !line.isBlank() && !line.startsWith("#"))
          .skip(1)
          .map(PublishedCase::parse);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static PublishedCase parse(String line) {
    String[] cells = line.split(",", 7);
    assertThat(cells).as(line).hasSize(7);
    Map<String, Double> inputs = new HashMap<>();
    for (String pair : cells[2].trim().split("\\s+", -1)) {
      String[] halves = pair.split("=", 2);
      inputs.put(halves[0], Double.valueOf(halves[1]));
    }
    double expected = Double.parseDouble(cells[3].trim());
    String allowed = cells[4].trim();
    double tolerance =
        allowed.endsWith("%")
            ? Math.abs(expected)
                * Double.parseDouble(allowed.substring(0, allowed.length() - 1))
                / 100
            : Double.parseDouble(allowed);
    String kind = cells[5].trim();
    assertThat(kind).isIn("published", "inputs", "derived", "memory");
    assertThat(cells[6]).as("source").isNotBlank();
    return new PublishedCase(
        cells[0].trim(), cells[1].trim(), inputs, expected, tolerance, cells[6].trim(), kind);
  }

  /** A given value. */
  double get(String name) {
    Double value = inputs.get(name);
    assertThat(value).as(id + " " + name).isNotNull();
    return value;
  }

  /** A given whole number. */
  int count(String name) {
    return (int) get(name);
  }

  /** Compares our answer with the source's. */
  void check(double answer) {
    assertThat(answer).as(id + " (" + source + ")").isCloseTo(expected, within(tolerance));
  }

  IllegalArgumentException unknown() {
    return new IllegalArgumentException("no such quantity: " + quantity);
  }

  @Override
  public String toString() {
    return id + " " + quantity + " = " + expected;
  }
}
