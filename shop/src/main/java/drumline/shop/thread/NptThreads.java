package drumline.shop.thread;

import drumline.shop.quantity.FigureTable;
import drumline.shop.thread.ThreadSize.ExternalLimits;
import drumline.shop.thread.ThreadSize.InternalLimits;
import drumline.shop.thread.ThreadSize.TaperLengths;
import drumline.shop.thread.ThreadSize.ThreadHand;
import drumline.shop.thread.ThreadSize.ThreadStart;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Pipe threads NPT 1/16 to 3.
 *
 * <p>Pitch diameter at the small end E0 = D − (0.05 D + 1.1) p, at the plane of hand-tight
 * engagement E1 = E0 + L1/16; effective length L2 = (0.8 D + 6.8) p; height of the thread 0.8 p;
 * the gauge plane may lie one turn either way. D outside diameter of the pipe, p pitch, in inches.
 *
 * <p>Source: [ASME-B1.20.1] 1983, sections 3 and 4, table 2; from memory.
 */
final class NptThreads implements ThreadFamily {

  private static final double IN_MM = 25.4;
  private static final String SIZE = "(\\d+/\\d+|\\d+[ \\-]\\d+/\\d+|\\d+)\"?";
  private static final Pattern SIZE_FIRST =
      Pattern.compile(SIZE + "(?:\\s*-\\s*(\\d+(?:\\.\\d+)?|11 1/2))?[\\s\\-]*NPT");
  private static final Pattern NAME_FIRST = Pattern.compile("NPT[\\s\\-]*" + SIZE);

  private final Map<String, FigureTable.Row> rows = new LinkedHashMap<>();

  NptThreads() {
    for (FigureTable.Row row : FigureTable.read(NptThreads.class, "pipe-npt-sizes.csv").rows()) {
      rows.put(row.text("size"), row);
    }
  }

  @Override
  public List<String> designations() {
    return rows.values().stream().map(NptThreads::designation).toList();
  }

  private static String designation(FigureTable.Row row) {
    return row.text("size") + "-" + row.text("threads_per_inch") + " NPT";
  }

  @Override
  public Optional<ThreadSize> find(String designation) {
    Matcher named = NAME_FIRST.matcher(designation);
    if (named.matches()) {
      return Optional.ofNullable(rows.get(named.group(1).replace('-', ' ')))
          .map(NptThreads::thread);
    }
    Matcher sized = SIZE_FIRST.matcher(designation);
    if (!sized.matches()) {
      return Optional.empty();
    }
    String perInch = sized.group(2) == null ? "" : sized.group(2).replace(" 1/2", ".5");
    return Optional.ofNullable(rows.get(sized.group(1).replace('-', ' ')))
        .filter(row -> perInch.isEmpty() || row.text("threads_per_inch").equals(perInch))
        .map(NptThreads::thread);
  }

  private static ThreadSize thread(FigureTable.Row row) {
    double outsideIn = row.figure("outside_in");
    double pitchIn = 1 / row.figure("threads_per_inch");
    double handTightIn = row.figure("hand_tight_in");
    double smallEndIn = outsideIn - (0.05 * outsideIn + 1.1) * pitchIn;
    double pitchDiameterMm = (smallEndIn + handTightIn / 16) * IN_MM;
    double heightMm = 0.8 * pitchIn * IN_MM;
    double pitchMm = pitchIn * IN_MM;
    double byMm = pitchMm / 16;
    double majorMm = pitchDiameterMm + heightMm;
    double minorMm = pitchDiameterMm - heightMm;
    return new ThreadSize(
        designation(row),
        ThreadSystem.PIPE_NPT,
        ThreadHand.RIGHT,
        "",
        majorMm,
        pitchMm,
        pitchDiameterMm,
        minorMm,
        Optional.of(
            new ExternalLimits(
                majorMm + byMm, majorMm - byMm, pitchDiameterMm + byMm, pitchDiameterMm - byMm)),
        Optional.of(
            new InternalLimits(
                minorMm - byMm, minorMm + byMm, pitchDiameterMm - byMm, pitchDiameterMm + byMm)),
        Optional.of(
            new TaperLengths(
                handTightIn * IN_MM, pitchMm, (0.8 * outsideIn + 6.8) * pitchIn * IN_MM)),
        new ThreadStart(
            OptionalDouble.of(row.figure("tap_drill_mm")),
            OptionalDouble.empty(),
            OptionalDouble.empty()));
  }
}
