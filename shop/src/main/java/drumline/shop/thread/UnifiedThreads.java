package drumline.shop.thread;

import drumline.shop.quantity.FigureTable;
import drumline.shop.thread.ThreadSize.ExternalLimits;
import drumline.shop.thread.ThreadSize.ThreadHand;
import drumline.shop.thread.ThreadSize.ThreadStart;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Unified inch threads #0 to 2 in of the series UNC, UNF and UNEF; class 2A/2B unless the name says
 * class 3.
 *
 * <p>Drill before tapping: for three quarters of the full thread height, D − 0.974 p; before
 * forming: D − 0.45 p; both rounded to 0.05 mm, common practice.
 *
 * <p>Source: [ASME-B1.1] 2003, table 1; limits see {@link UnifiedLimits}. Known limits: class 1 and
 * the constant-pitch series are not covered.
 */
final class UnifiedThreads implements ThreadFamily {

  private static final double IN_MM = 25.4;

  /** A size written in decimals may be rounded to three of them. */
  private static final double NEAR_MM = 0.015;

  private static final Pattern NAME =
      Pattern.compile(
          "(?:No\\.?\\s*)?(#?\\d+/\\d+|\\d+[ \\-]\\d+/\\d+|#?\\d+|\\d*\\.\\d+)\\s*-\\s*"
              + "(\\d+ 1/2|\\d+(?:\\.\\d+)?)(?:[\\s\\-]*(UNC|UNF|UNEF))?(?:[\\s\\-]*(\\d)([AB]))?");

  private record Size(String size, double majorMm, double perInchCount, String series) {

    String designation() {
      String count =
          perInchCount == Math.rint(perInchCount) ? "" + (int) perInchCount : "" + perInchCount;
      return size + "-" + count + " " + series;
    }

    boolean isCalled(String written) {
      String bare = written.replace('-', ' ');
      return size.equals(bare) || size.equals("#" + bare) || isDecimal(written);
    }

    private boolean isDecimal(String written) {
      return written.contains(".")
          && Math.abs(Double.parseDouble(written) * IN_MM - majorMm) < NEAR_MM;
    }
  }

  private final List<Size> sizes = new ArrayList<>();

  UnifiedThreads() {
    for (FigureTable.Row row : FigureTable.read(UnifiedThreads.class, "unified-sizes.csv").rows()) {
      for (String series : List.of("UNC", "UNF", "UNEF")) {
        row.findFigure(series.toLowerCase(Locale.ROOT) + "_per_inch")
            .ifPresent(
                perInch -> {
                  double majorMm = row.figure("major_in") * IN_MM;
                  sizes.add(new Size(row.text("size"), majorMm, perInch, series));
                });
      }
    }
  }

  @Override
  public List<String> designations() {
    return sizes.stream().map(Size::designation).toList();
  }

  @Override
  public Optional<ThreadSize> find(String designation) {
    Matcher matcher = NAME.matcher(designation.replace("\"", ""));
    if (!matcher.matches()) {
      return Optional.empty();
    }
    String series = matcher.group(3);
    String classText = matcher.group(4) == null ? "2" : matcher.group(4);
    if (!classText.equals("2") && !classText.equals("3")) {
      return Optional.empty();
    }
    double perInch = Double.parseDouble(matcher.group(2).replace(" 1/2", ".5"));
    String written = matcher.group(1);
    return sizes.stream()
        .filter(size -> size.perInchCount() == perInch && size.isCalled(written))
        .filter(size -> series == null || size.series().equals(series))
        .findFirst()
        .map(size -> thread(size, Integer.parseInt(classText)));
  }

  private static ThreadSize thread(Size size, int threadClass) {
    double pitchMm = IN_MM / size.perInchCount();
    double engagementMm = size.series().equals("UNEF") ? 9 * pitchMm : size.majorMm();
    UnifiedLimits limits = new UnifiedLimits(size.majorMm(), pitchMm, engagementMm, threadClass);
    return new ThreadSize(
        size.designation(),
        ThreadSystem.UNIFIED,
        ThreadHand.RIGHT,
        threadClass + "A/" + threadClass + "B",
        size.majorMm(),
        pitchMm,
        limits.pitchDiameterMm(),
        limits.minorMm(),
        Optional.of(limits.external()),
        Optional.of(limits.internal()),
        Optional.empty(),
        start(size.majorMm(), pitchMm, limits.external()));
  }

  private static ThreadStart start(double majorMm, double pitchMm, ExternalLimits external) {
    return new ThreadStart(
        OptionalDouble.of(StandardRounding.toTwentieth(majorMm - 0.974 * pitchMm)),
        OptionalDouble.of(StandardRounding.toTwentieth(majorMm - 0.45 * pitchMm)),
        OptionalDouble.of(
            StandardRounding.halfUp((external.pitchMaxMm() + external.pitchMinMm()) / 2, 3)));
  }
}
