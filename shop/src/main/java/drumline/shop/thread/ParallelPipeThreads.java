package drumline.shop.thread;

import drumline.shop.thread.ThreadSize.ExternalLimits;
import drumline.shop.thread.ThreadSize.InternalLimits;
import drumline.shop.thread.ThreadSize.ThreadHand;
import drumline.shop.thread.ThreadSize.ThreadStart;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Pipe threads G 1/16 to G 6; the external thread in class A unless the name says B.
 *
 * <p>External limits lie below the basic size, internal ones above it. Drill before forming: D −
 * 0.5 P rounded to 0.05 mm, common practice.
 *
 * <p>Source: [ISO-228-1] 2000, table 1.
 */
final class ParallelPipeThreads implements ThreadFamily {

  private static final Pattern NAME =
      Pattern.compile("G\\s*(\\d+/\\d+|\\d+[ \\-]\\d+/\\d+|\\d+)\"?[\\s\\-]*([AB])?");

  private final Map<String, PipeProfile> profiles = PipeProfile.all();

  @Override
  public List<String> designations() {
    return profiles.keySet().stream().map(size -> "G " + size).toList();
  }

  @Override
  public Optional<ThreadSize> find(String designation) {
    Matcher matcher = NAME.matcher(designation);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    String threadClass = matcher.group(2) == null ? "A" : matcher.group(2);
    return Optional.ofNullable(profiles.get(matcher.group(1).replace('-', ' ')))
        .map(profile -> thread(profile, threadClass));
  }

  private static ThreadSize thread(PipeProfile profile, String threadClass) {
    double pitchWidthMm = profile.row().figure("pitch_um") / 1000;
    double minorWidthMm = profile.row().figure("minor_um") / 1000;
    double majorWidthMm = profile.row().figure("major_um") / 1000;
    double externalWidthMm = threadClass.equals("A") ? pitchWidthMm : 2 * pitchWidthMm;
    double majorMm = profile.majorMm();
    double pitchDiameterMm = profile.pitchDiameterMm();
    ExternalLimits external =
        new ExternalLimits(
            majorMm,
            rounded(majorMm - majorWidthMm),
            pitchDiameterMm,
            rounded(pitchDiameterMm - externalWidthMm));
    InternalLimits internal =
        new InternalLimits(
            profile.minorMm(),
            rounded(profile.minorMm() + minorWidthMm),
            pitchDiameterMm,
            rounded(pitchDiameterMm + pitchWidthMm));
    return new ThreadSize(
        "G " + profile.size(),
        ThreadSystem.PIPE_G,
        ThreadHand.RIGHT,
        threadClass,
        majorMm,
        profile.pitchMm(),
        pitchDiameterMm,
        profile.minorMm(),
        Optional.of(external),
        Optional.of(internal),
        Optional.empty(),
        new ThreadStart(
            OptionalDouble.of(profile.row().figure("tap_drill_mm")),
            OptionalDouble.of(StandardRounding.toTwentieth(majorMm - 0.5 * profile.pitchMm())),
            OptionalDouble.of(rounded(pitchDiameterMm - externalWidthMm / 2))));
  }

  private static double rounded(double mm) {
    return StandardRounding.halfUp(mm, 3);
  }
}
