package drumline.economics.triage;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * One rule that a piece is held against.
 *
 * @param id short name
 * @param scope what it is about
 * @param measure figure it asks for
 * @param sense on which side of its limits a figure is good
 * @param fits limit of "fits"; empty where the machine sets it
 * @param look limit of "look closer"; empty where the machine sets it
 * @param unit figure and limits as a reader sees them, with {@code #} for the number
 * @param text the rule in plain words
 * @param source where it comes from
 */
public record TriageRule(
    String id,
    Scope scope,
    Measure measure,
    Sense sense,
    Optional<Double> fits,
    Optional<Double> look,
    String unit,
    String text,
    String source) {

  /** What a rule is about. */
  public enum Scope {
    /** The piece against multi-spindle work as such. */
    PIECE,
    /** The piece against one machine. */
    MACHINE
  }

  /** On which side of its limits a figure is good. */
  public enum Sense {
    /** The figure must reach the limit. */
    AT_LEAST("at least"),
    /** The figure must not pass the limit. */
    AT_MOST("at most");

    private final String words;

    Sense(String words) {
      this.words = words;
    }
  }

  /** The finding; empty where the piece has nothing of the kind. */
  Optional<RuleFinding> judge(Optional<Measured> measured) {
    return measured.map(this::judge);
  }

  private RuleFinding judge(Measured measured) {
    double fitsAt = fits.orElse(measured.fitsRatio());
    double lookAt = look.orElse(measured.lookRatio());
    double value = measured.valueRatio();
    Verdict verdict =
        keeps(value, fitsAt)
            ? Verdict.FITS
            : keeps(value, lookAt) ? Verdict.LOOK_CLOSER : Verdict.DOES_NOT_FIT;
    String detail = measured.detail().isEmpty() ? "" : " (" + measured.detail() + ")";
    return new RuleFinding(
        id, text, withUnit(value) + detail, limit(fitsAt, lookAt), verdict, source);
  }

  private boolean keeps(double value, double limit) {
    return sense == Sense.AT_LEAST ? value >= limit : value <= limit;
  }

  private String limit(double fitsAt, double lookAt) {
    String plain = sense.words + " " + withUnit(fitsAt);
    if (fitsAt == lookAt) {
      return plain;
    }
    return Double.isInfinite(lookAt)
        ? plain + ", beyond it look closer"
        : plain + ", look closer to " + number(lookAt);
  }

  private String withUnit(double value) {
    return unit.replace("#", number(value));
  }

  private static String number(double value) {
    return new BigDecimal(value)
        .setScale(2, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
