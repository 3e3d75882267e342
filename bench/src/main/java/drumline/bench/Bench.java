package drumline.bench;

import drumline.bench.inquiry.MainExampleCase;
import drumline.bench.inquiry.SoakCase;
import drumline.bench.inquiry.WhatIfCase;
import drumline.bench.line.LineCase;
import drumline.bench.measure.BenchCase;
import drumline.bench.measure.Ledger;
import drumline.bench.measure.Measured;
import drumline.bench.measure.Sample;
import drumline.bench.route.GeneratedCase;
import drumline.bench.route.ReferenceCase;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;

/**
 * Measures a case and adds it to the ledger: {@code Bench CASE SECONDS COUNT LEDGER NOTE}, with the
 * search effort in seconds and the most instances of each kind.
 */
public final class Bench {
  private static final List<BenchCase> CASES =
      List.of(
          new LineCase(),
          new ReferenceCase(),
          new GeneratedCase(),
          new MainExampleCase(),
          new WhatIfCase(),
          new SoakCase());

  private Bench() {}

  /**
   * Runs one case.
   *
   * @throws IOException if the ledger cannot be written
   */
  public static void main(String[] arguments) throws IOException {
    if (arguments.length != 5) {
      System.err.println("usage: bench/run CASE [SECONDS [COUNT [NOTE]]]; cases: " + names());
      System.exit(2);
    }
    BenchCase one = find(arguments[0]);
    Sample sample = new Sample(Double.parseDouble(arguments[1]), Integer.parseInt(arguments[2]));
    List<Measured> results = one.run(sample);
    Ledger.add(Path.of(arguments[3]), LocalDate.now(ZoneId.systemDefault()), results, arguments[4]);
    for (Measured r : results) {
      System.out.println(
          String.join(
              " | ", r.caseName(), r.median(), r.ratio(), r.bar(), r.isMet() ? "met" : "MISSED"));
    }
  }

  /** Names of all cases. */
  public static List<String> names() {
    return CASES.stream().map(BenchCase::name).toList();
  }

  private static BenchCase find(String name) {
    return CASES.stream()
        .filter(c -> c.name().equals(name))
        .findFirst()
        .orElseThrow(
            () -> new IllegalArgumentException("CASE is " + name + ", allowed: " + names()));
  }
}
