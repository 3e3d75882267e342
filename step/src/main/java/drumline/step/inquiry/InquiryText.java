package drumline.step.inquiry;

import drumline.step.contour.Step;
import drumline.step.piece.StepImport;
import drumline.step.piece.TurnedPiece;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The inquiry file of an imported piece: the part as it was recognised, and what only the user
 * knows as values marked to be replaced.
 */
public final class InquiryText {
  private static final int WIDTH = 100;

  private InquiryText() {}

  /**
   * The text.
   *
   * @param source name of the file that the piece came from
   * @throws IllegalArgumentException if the import found no piece
   */
  public static String of(StepImport imported, String source) {
    TurnedPiece piece =
        imported
            .piece()
            .orElseThrow(() -> new IllegalArgumentException("imported: no piece was found"));
    Figures figures = new Figures(imported.isInch());
    List<String> lines = new ArrayList<>(head(imported, piece, source));
    lines.addAll(business(imported, piece, figures));
    lines.add("part:");
    lines.add("  name: " + quoted(name(imported)));
    lines.add("  length: " + figures.length(piece.lengthMm()));
    lines.add("  general-tolerances: ISO 2768-m   # REPLACE: as the print says");
    lines.add("  roughness: Ra 3.2   # REPLACE: as the print says");
    lines.add("");
    lines.addAll(new PartText(piece, figures).lines());
    threads(piece, lines);
    return String.join("\n", lines) + "\n";
  }

  private static String name(StepImport imported) {
    return imported.name().isBlank() ? "imported piece" : imported.name().strip();
  }

  private static List<String> head(StepImport imported, TurnedPiece piece, String source) {
    List<String> lines = new ArrayList<>();
    comment(
        lines,
        "Read from "
            + clean(source)
            + " ("
            + clean(String.join(", ", imported.schemas()))
            + "). Solids carry no tolerances, roughness, threads, material or volumes: everything"
            + " marked REPLACE is a placeholder. Compare each size with the print.");
    for (String note : piece.notes()) {
      comment(lines, "- " + clean(note) + ".");
    }
    return lines;
  }

  private static void comment(List<String> lines, String text) {
    StringBuilder line = new StringBuilder("#");
    for (String word : text.split(" ", -1)) {
      if (line.length() + word.length() + 1 > WIDTH) {
        lines.add(line.toString());
        line = new StringBuilder("#  ");
      }
      line.append(' ').append(word);
    }
    lines.add(line.toString());
  }

  private static List<String> business(StepImport imported, TurnedPiece piece, Figures figures) {
    String number = imported.number().isBlank() ? name(imported) : imported.number().strip();
    return List.of(
        "inquiry:",
        "  title: " + quoted(name(imported)),
        "  number: " + quoted(number),
        "",
        "units: " + (imported.isInch() ? "inch" : "metric"),
        "",
        "material: 11SMn30   # REPLACE: the material of the print",
        "bar: " + bar(piece, figures),
        "",
        "volumes: {per-year: 500 000, per-lot: 50 000, years: 3}   # REPLACE",
        "shifts: {per-day: 2, hours: 8 h, days-per-year: 230}   # REPLACE",
        "rates: {currency: EUR, labour: 36 EUR/h, set-up: 90 EUR/h, scrap: 1 %}   # REPLACE",
        "");
  }

  private static String bar(TurnedPiece piece, Figures figures) {
    if (piece.bar().isPresent()) {
      String shape = piece.bar().get().sides() == 6 ? "hexagon" : "square";
      return "{shape: "
          + shape
          + ", size: "
          + figures.length(piece.bar().get().across())
          + "}   # the piece shows a whole "
          + shape
          + ", taken as the bar's own";
    }
    double most = 0;
    for (Step step : piece.outside()) {
      most = Math.max(most, 2 * Math.max(step.r0(), step.r1()));
    }
    return "{shape: round, size: "
        + figures.length(figures.barMm(most))
        + "}   # suggested: next size above Ø "
        + figures.length(most)
        + " with stock to turn";
  }

  private static void threads(TurnedPiece piece, List<String> lines) {
    boolean hasFeatures = lines.contains("  features:");
    for (String note : piece.notes()) {
      if (note.startsWith("PROBABLY A THREAD")) {
        if (!hasFeatures) {
          lines.add("  # features:");
          hasFeatures = true;
        }
        lines.add(
            "    # - {id: thread, kind: thread, step: step-1, size: M10-6g, length: 10 mm}"
                + "   # REPLACE: step, size, length");
        comment(lines, clean(note.toLowerCase(Locale.ROOT)));
      }
    }
  }

  private static String clean(String text) {
    return text.replaceAll("[\\p{Cntrl}\\u0085\\u2028\\u2029\\uFEFF]+", " ");
  }

  /** A text in double quotes, safe in YAML. */
  private static String quoted(String text) {
    return "\"" + clean(text).replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }
}
