package drumline.shop.thread;

import drumline.shop.problem.Problem;
import drumline.shop.quantity.NearestWord;
import drumline.shop.thread.ThreadSize.ThreadHand;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * All standard threads the program knows, found by the designation a print gives: {@code M12},
 * {@code M12x1}, {@code M12×1-6g}, {@code 1/4-20 UNC-2B}, {@code #10-32 UNF}, {@code G1/4}, {@code
 * G 3/8 A}, {@code 1/8-27 NPT}, each with {@code LH} for a left-hand thread.
 */
public final class ThreadCatalogue {

  private static final Pattern LEFT_HAND =
      Pattern.compile("[\\s\\-]*(LH|L\\.H\\.|left[\\s\\-]?hand)$", Pattern.CASE_INSENSITIVE);
  private static final Pattern METRIC_SIZE = Pattern.compile("M\\s*(\\d+(?:\\.\\d+)?)");
  private static final List<ThreadFamily> FAMILIES =
      List.of(
          new MetricThreads(),
          new UnifiedThreads(),
          new ParallelPipeThreads(),
          new SealingPipeThreads(),
          new NptThreads());

  private ThreadCatalogue() {}

  /**
   * The thread of that designation; without a class in it, in the usual one (6g/6H, 2A/2B, A).
   *
   * @return empty if no standard thread is called that; {@link #explain} then says what might be
   *     meant
   */
  public static Optional<ThreadSize> find(String designation) {
    String plain = plain(designation);
    String right = LEFT_HAND.matcher(plain).replaceFirst("");
    ThreadHand hand = right.equals(plain) ? ThreadHand.RIGHT : ThreadHand.LEFT;
    return FAMILIES.stream()
        .flatMap(family -> family.find(right).stream())
        .findFirst()
        .map(thread -> thread.withHand(hand));
  }

  /** Designations of all known threads, by standard, smallest first. */
  public static List<String> designations() {
    return FAMILIES.stream().flatMap(family -> family.designations().stream()).toList();
  }

  /**
   * Why a designation is not known, with the nearest known ones.
   *
   * @param designation what stands on the print
   * @param where place as a reader finds it, for {@link Problem#where()}
   */
  public static Problem explain(String designation, String where) {
    String found = designation.isBlank() ? "nothing" : "\"" + designation.strip() + "\"";
    return Problem.error(
        "thread-unknown",
        where,
        found,
        "a thread of ISO 261 (M1.6 to M64), ASME B1.1 (UNC, UNF, UNEF #0 to 2 in, classes 2 and 3),"
            + " ISO 228-1 (G), ISO 7-1 (R, Rp, Rc) or ASME B1.20.1 (NPT)",
        hint(designation));
  }

  private static String hint(String designation) {
    String pointed = designation.replaceAll("(\\d),(\\d)", "$1.$2");
    if (!pointed.equals(designation) && find(pointed).isPresent()) {
      return "Maybe " + pointed + ".";
    }
    String plain = LEFT_HAND.matcher(plain(designation)).replaceFirst("");
    String withoutClass = plain.replaceFirst("[\\s\\-]+[^\\s\\-]+$", "");
    if (!withoutClass.equals(plain) && find(withoutClass).isPresent()) {
      return "Maybe " + withoutClass + " in another tolerance class.";
    }
    List<String> near = sameSize(plain);
    if (near.isEmpty()) {
      near = nextMetricSizes(plain);
    }
    if (near.isEmpty()) {
      near = NearestWord.among(plain, designations(), 3);
    }
    return near.isEmpty() ? "" : "Maybe " + String.join(", ", near) + ".";
  }

  /** The metric threads next to a diameter that the standard does not have. */
  private static List<String> nextMetricSizes(String plain) {
    Matcher matcher = METRIC_SIZE.matcher(plain);
    if (!matcher.lookingAt()) {
      return List.of();
    }
    double majorMm = Double.parseDouble(matcher.group(1));
    return FAMILIES.get(0).designations().stream()
        .filter(known -> !known.contains("x"))
        .sorted(
            Comparator.comparingDouble(
                known -> Math.abs(Double.parseDouble(known.substring(1)) - majorMm)))
        .limit(2)
        .toList();
  }

  /** Known threads of the same diameter, so that a wrong pitch is answered with the right ones. */
  private static List<String> sameSize(String plain) {
    String size = plain.replaceFirst("^(M[\\d.]+|#?[\\d]+(?:[ /][\\d/]+)?(?=-)).*$", "$1");
    if (size.equals(plain) && !plain.startsWith("M")) {
      return List.of();
    }
    return designations().stream()
        .filter(
            known ->
                known.equals(size)
                    || known.startsWith(size + "x")
                    || known.startsWith(size + "-")
                    || known.startsWith("#" + size + "-"))
        .limit(5)
        .toList();
  }

  private static String plain(String designation) {
    String plain =
        designation
            .strip()
            .replace('×', 'x')
            .replace('–', '-')
            .replaceAll("\\s+", " ")
            .replaceAll("(?<=[\\d ])X(?=[\\d. ])", "x");
    return plain.toLowerCase(Locale.ROOT).startsWith("m") ? "M" + plain.substring(1) : plain;
  }
}
