package drumline.shop.thread;

import drumline.shop.quantity.FigureTable;
import drumline.shop.thread.ThreadSize.ExternalLimits;
import drumline.shop.thread.ThreadSize.InternalLimits;
import drumline.shop.thread.ThreadSize.ThreadHand;
import drumline.shop.thread.ThreadSize.ThreadStart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Metric screw threads M1.6 to M64, coarse and fine; class 6g/6H unless the name says otherwise.
 *
 * <p>Drill before tapping: coarse pitch as [ISO-2306], fine pitch D − P rounded to 0.1 mm (to 0.05
 * mm below 5 mm). Drill before forming: D − 0.45 P rounded to 0.05 mm, common practice.
 *
 * <p>Source: [ISO-261] 1998, table 2; limits see {@link MetricLimits}.
 */
final class MetricThreads implements ThreadFamily {

  private static final Pattern NAME =
      Pattern.compile("M\\s*(\\d+(?:\\.\\d+)?)(?:\\s*x\\s*(\\d*\\.?\\d+))?(?:[\\s\\-]+(\\S+))?");
  private static final MetricClass MEDIUM_EXTERNAL = new MetricClass('g', 6, 6);
  private static final MetricClass MEDIUM_INTERNAL = new MetricClass('H', 6, 6);
  private static final double SMALL_DRILL_MM = 5;

  private record Size(double majorMm, double pitchMm, boolean coarse, OptionalDouble drillMm) {

    String designation() {
      return "M" + plain(majorMm) + (coarse ? "" : "x" + plain(pitchMm));
    }
  }

  private record Classes(MetricClass external, MetricClass internal) {}

  private final List<Size> sizes = new ArrayList<>();

  MetricThreads() {
    for (FigureTable.Row row : FigureTable.read(MetricThreads.class, "metric-sizes.csv").rows()) {
      double majorMm = row.figure("major_mm");
      OptionalDouble drillMm = row.findFigure("coarse_tap_drill_mm");
      row.findFigure("coarse_pitch_mm")
          .ifPresent(pitchMm -> sizes.add(new Size(majorMm, pitchMm, true, drillMm)));
      for (String pitch : row.text("fine_pitches_mm").split(" ", -1)) {
        if (!pitch.isEmpty()) {
          sizes.add(new Size(majorMm, Double.parseDouble(pitch), false, OptionalDouble.empty()));
        }
      }
    }
  }

  @Override
  public List<String> designations() {
    return sizes.stream().map(Size::designation).toList();
  }

  @Override
  public Optional<ThreadSize> find(String designation) {
    Matcher matcher = NAME.matcher(designation);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    double majorMm = Double.parseDouble(matcher.group(1));
    String pitch = matcher.group(2);
    String classText = matcher.group(3);
    return sizes.stream()
        .filter(size -> size.majorMm() == majorMm)
        .filter(size -> pitch == null ? size.coarse() : size.pitchMm() == Double.parseDouble(pitch))
        .findFirst()
        .flatMap(size -> classes(classText == null ? "" : classText).flatMap(c -> thread(size, c)));
  }

  private static Optional<Classes> classes(String text) {
    MetricClass external = MEDIUM_EXTERNAL;
    MetricClass internal = MEDIUM_INTERNAL;
    if (!text.isEmpty()) {
      for (String part : text.split("/", -1)) {
        Optional<MetricClass> found = MetricClass.find(part);
        if (found.isEmpty()) {
          return Optional.empty();
        }
        if (found.get().isInternal()) {
          internal = found.get();
        } else {
          external = found.get();
        }
      }
    }
    return Optional.of(new Classes(external, internal));
  }

  private static Optional<ThreadSize> thread(Size size, Classes classes) {
    double majorMm = size.majorMm();
    double pitchMm = size.pitchMm();
    Optional<ExternalLimits> external =
        MetricLimits.findExternal(majorMm, pitchMm, classes.external());
    Optional<InternalLimits> internal =
        MetricLimits.findInternal(majorMm, pitchMm, classes.internal());
    if (external.isEmpty() || internal.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new ThreadSize(
            size.designation(),
            ThreadSystem.METRIC,
            ThreadHand.RIGHT,
            classes.external().text() + "/" + classes.internal().text(),
            majorMm,
            pitchMm,
            MetricLimits.pitchDiameterMm(majorMm, pitchMm),
            MetricLimits.minorMm(majorMm, pitchMm),
            external,
            internal,
            Optional.empty(),
            start(size, external.get())));
  }

  private static ThreadStart start(Size size, ExternalLimits external) {
    double coreMm = size.majorMm() - size.pitchMm();
    double fineDrillMm =
        coreMm < SMALL_DRILL_MM
            ? StandardRounding.toTwentieth(coreMm)
            : StandardRounding.halfEven(coreMm, 1);
    return new ThreadStart(
        OptionalDouble.of(size.drillMm().orElse(fineDrillMm)),
        OptionalDouble.of(StandardRounding.toTwentieth(size.majorMm() - 0.45 * size.pitchMm())),
        OptionalDouble.of(
            StandardRounding.halfUp((external.pitchMaxMm() + external.pitchMinMm()) / 2, 3)));
  }

  private static String plain(double mm) {
    return mm == Math.rint(mm) ? Long.toString((long) mm) : Double.toString(mm);
  }
}
