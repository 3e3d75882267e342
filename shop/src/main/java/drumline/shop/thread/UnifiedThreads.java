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
 * <p>Drill before tapping: for three quarters of the full thread height, D − 0.974 p, but never
 * below the smallest minor diameter; before forming: D − 0.45 p; both rounded to 0.05 mm, common
 * practice.
 *
 * <p>Source: [ASME-B1.1] 2003, table 1; limits see {@link UnifiedLimits}. Known limits: class 1 and
 * the constant-pitch series are not covered.
 */
final class UnifiedThreads implements ThreadFamily {

  private static final double IN_MM = 25.4;
  private static final Pattern NAME =
      Pattern.compile(
          "(?:No\\.?\\s*)?(#?\\d+/\\d+|\\d+[ \\-]\\d+/\\d+|#?\\d+|\\d*\\.\\d+)\\s*-\\s*"
              + "(\\d+ 1/2|\\d+(?:\\.\\d+)?)(?:[\\s\\-]*(UNC|UNF|UNEF))?(?:[\\s\\-]*(\\d)([AB]))?");

  private record Size(String size, double majorIn, double perInch, String series) {

    String designation() {
      String count = perInch == Math.rint(perInch) ? "" + (int) perInch : "" + perInch;
      return size + "-" + count + " " + series;
    }

    boolean isCalled(String written) {
      String bare = written.replace('-', ' ');
      return size.equals(bare) || size.equals("#" + bare) || isDecimal(written);
    }

    private boolean isDecimal(String written) {
      return written.contains(".") && Math.abs(Double.parseDouble(written) - majorIn) < 0.0006;
    }
  }

  private final List<Size> sizes = new ArrayList<>();

  UnifiedThreads() {
    for (FigureTable.Row row : FigureTable.read(UnifiedThreads.class, "unified-sizes.csv").rows()) {
      for (String series : List.of("UNC", "UNF", "UNEF")) {
        row.findFigure(series.toLowerCase(Locale.ROOT) + "_per_inch")
            .ifPresent(
                perInch ->
                    sizes.add(new Size(row.text("size"), row.figure("major_in"), perInch, series)));
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
        .filter(size -> size.perInch() == perInch && size.isCalled(written))
        .filter(size -> series == null || size.series().equals(series))
        .findFirst()
        .map(size -> thread(size, Integer.parseInt(classText)));
  }

  private static ThreadSize thread(Size size, int threadClass) {
    double pitchIn = 1 / size.perInch();
    double engagementIn = size.series().equals("UNEF") ? 9 * pitchIn : size.majorIn();
    UnifiedLimits limits = new UnifiedLimits(size.majorIn(), pitchIn, engagementIn, threadClass);
    return new ThreadSize(
        size.designation(),
        ThreadSystem.UNIFIED,
        ThreadHand.RIGHT,
        threadClass + "A/" + threadClass + "B",
        size.majorIn() * IN_MM,
        pitchIn * IN_MM,
        limits.pitchDiameterIn() * IN_MM,
        limits.minorIn() * IN_MM,
        Optional.of(limits.external()),
        Optional.of(limits.internal()),
        Optional.empty(),
        start(size, pitchIn, limits));
  }

  private static ThreadStart start(Size size, double pitchIn, UnifiedLimits limits) {
    double drillMm = StandardRounding.toTwentieth((size.majorIn() - 0.974 * pitchIn) * IN_MM);
    double formMm = StandardRounding.toTwentieth((size.majorIn() - 0.45 * pitchIn) * IN_MM);
    ExternalLimits external = limits.external();
    return new ThreadStart(
        OptionalDouble.of(drillMm),
        OptionalDouble.of(formMm),
        OptionalDouble.of(
            StandardRounding.halfUp((external.pitchMaxMm() + external.pitchMinMm()) / 2, 3)));
  }
}
