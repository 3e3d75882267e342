package drumline.shop.thread;

import drumline.shop.quantity.FigureTable;
import drumline.shop.thread.ThreadSize.ExternalLimits;
import drumline.shop.thread.ThreadSize.InternalLimits;
import drumline.shop.thread.ThreadSize.TaperLengths;
import drumline.shop.thread.ThreadSize.ThreadHand;
import drumline.shop.thread.ThreadSize.ThreadStart;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Pipe threads R, Rp and Rc 1/16 to 6, tight on the thread.
 *
 * <p>Diameters are those of thread G, for taper threads at the gauge plane; a shift of the gauge
 * plane by t changes the diameter there by t/16.
 *
 * <p>Source: [ISO-7-1] 1994, table 1; from memory.
 */
final class SealingPipeThreads implements ThreadFamily {

  private static final Pattern NAME =
      Pattern.compile("(R|Rp|Rc)\\s*(\\d+/\\d+|\\d+[ \\-]\\d+/\\d+|\\d+)\"?");

  private final Map<String, PipeProfile> profiles = PipeProfile.all();
  private final Map<String, FigureTable.Row> rows = new LinkedHashMap<>();

  SealingPipeThreads() {
    for (FigureTable.Row row :
        FigureTable.read(SealingPipeThreads.class, "pipe-r-sizes.csv").rows()) {
      rows.put(row.text("size"), row);
    }
  }

  @Override
  public List<String> designations() {
    List<String> all = new ArrayList<>();
    for (String letters : List.of("R", "Rp", "Rc")) {
      rows.keySet().forEach(size -> all.add(letters + " " + size));
    }
    return all;
  }

  @Override
  public Optional<ThreadSize> find(String designation) {
    Matcher matcher = NAME.matcher(designation);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    String size = matcher.group(2).replace('-', ' ');
    FigureTable.Row row = rows.get(size);
    PipeProfile profile = profiles.get(size);
    if (row == null || profile == null) {
      return Optional.empty();
    }
    return Optional.of(
        switch (matcher.group(1)) {
          case "R" -> external(profile, row);
          case "Rp" -> parallel(profile, row);
          default -> taperInternal(profile, row);
        });
  }

  private static ThreadSize external(PipeProfile profile, FigureTable.Row row) {
    double shiftMm = row.figure("gauge_shift_mm");
    double byMm = shiftMm / 16;
    ExternalLimits limits =
        new ExternalLimits(
            rounded(profile.majorMm() + byMm),
            rounded(profile.majorMm() - byMm),
            rounded(profile.pitchDiameterMm() + byMm),
            rounded(profile.pitchDiameterMm() - byMm));
    ThreadStart start =
        new ThreadStart(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    return thread(
        "R", ThreadSystem.PIPE_R, profile, Optional.of(limits), Optional.empty(), row, start);
  }

  private static ThreadSize parallel(PipeProfile profile, FigureTable.Row row) {
    double byMm = row.figure("rp_um") / 1000;
    double drillMm = StandardRounding.toTwentieth(profile.minorMm() + byMm / 2);
    return thread(
        "Rp",
        ThreadSystem.PIPE_RP,
        profile,
        Optional.empty(),
        Optional.of(internalLimits(profile, byMm)),
        row,
        drilled(drillMm));
  }

  private static ThreadSize taperInternal(PipeProfile profile, FigureTable.Row row) {
    double byMm = row.figure("rc_shift_mm") / 16;
    return thread(
        "Rc",
        ThreadSystem.PIPE_RC,
        profile,
        Optional.empty(),
        Optional.of(internalLimits(profile, byMm)),
        row,
        drilled(row.figure("rc_tap_drill_mm")));
  }

  private static InternalLimits internalLimits(PipeProfile profile, double byMm) {
    return new InternalLimits(
        rounded(profile.minorMm() - byMm),
        rounded(profile.minorMm() + byMm),
        rounded(profile.pitchDiameterMm() - byMm),
        rounded(profile.pitchDiameterMm() + byMm));
  }

  private static ThreadStart drilled(double mm) {
    return new ThreadStart(OptionalDouble.of(mm), OptionalDouble.empty(), OptionalDouble.empty());
  }

  private static ThreadSize thread(
      String letters,
      ThreadSystem system,
      PipeProfile profile,
      Optional<ExternalLimits> external,
      Optional<InternalLimits> internal,
      FigureTable.Row row,
      ThreadStart start) {
    boolean isTaper = system.taperRatio() > 0;
    String shift = system == ThreadSystem.PIPE_RC ? "rc_shift_mm" : "gauge_shift_mm";
    TaperLengths taper =
        new TaperLengths(row.figure("gauge_mm"), row.figure(shift), row.figure("useful_mm"));
    return new ThreadSize(
        letters + " " + profile.size(),
        system,
        ThreadHand.RIGHT,
        "",
        profile.majorMm(),
        profile.pitchMm(),
        profile.pitchDiameterMm(),
        profile.minorMm(),
        external,
        internal,
        isTaper ? Optional.of(taper) : Optional.empty(),
        start);
  }

  private static double rounded(double mm) {
    return StandardRounding.halfUp(mm, 3);
  }
}
