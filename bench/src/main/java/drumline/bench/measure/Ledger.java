package drumline.bench.measure;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.List;

/** Results by date in a file of tab-separated columns; lines are only ever added. */
public final class Ledger {
  private static final String HEAD = "date\tcase\tmedian\tratio\tbar\tmet\tcores\tnote\n";

  private Ledger() {}

  /**
   * Adds results.
   *
   * @param note what a reader must know, such as other work on the machine
   * @throws IOException if the file cannot be written
   */
  public static void add(Path file, LocalDate date, List<Measured> results, String note)
      throws IOException {
    if (!Files.exists(file)) {
      Files.writeString(file, HEAD, StandardCharsets.UTF_8);
    }
    for (Measured result : results) {
      String line =
          String.join(
              "\t",
              date.toString(),
              result.caseName(),
              result.median(),
              result.ratio(),
              result.bar(),
              result.isMet() ? "yes" : "no",
              "" + Runtime.getRuntime().availableProcessors(),
              note);
      Files.writeString(file, line + "\n", StandardCharsets.UTF_8, StandardOpenOption.APPEND);
    }
  }
}
