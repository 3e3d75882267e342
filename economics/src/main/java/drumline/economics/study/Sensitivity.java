package drumline.economics.study;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Which assumption moves the piece cost most: each is changed alone by the same share up and down,
 * and the whole study computed again.
 *
 * <p>Source: common practice (one-at-a-time sensitivity). Known limit: it does not show what
 * happens when several are wrong together.
 *
 * @param changePct share by which each was changed
 * @param effects one for each assumption, the greatest first
 */
public record Sensitivity(double changePct, List<Effect> effects) {

  /** Copies the list. */
  public Sensitivity {
    effects = List.copyOf(effects);
  }

  /**
   * What one assumption does.
   *
   * @param assumed the assumption
   * @param costWhenLess piece cost with less of it
   * @param costWhenMore piece cost with more of it
   */
  public record Effect(Assumed assumed, BigDecimal costWhenLess, BigDecimal costWhenMore) {

    /** Distance between both piece costs. */
    public BigDecimal swing() {
      return costWhenMore.subtract(costWhenLess).abs();
    }
  }

  /**
   * The sensitivity of a case.
   *
   * @param given the case
   * @param changePct share to change by, above 0 and below 100
   * @throws IllegalArgumentException if the share is outside, or the changed case has no answer
   */
  public static Sensitivity of(MoneyCase given, double changePct) {
    if (!(changePct > 0 && changePct < 100)) {
      throw new IllegalArgumentException(
          "changePct: " + changePct + ", allowed: above 0 and below 100 %");
    }
    return new Sensitivity(
        changePct,
        Arrays.stream(Assumed.values())
            .map(assumed -> effect(given, assumed, changePct / 100))
            .sorted(Comparator.comparing(Effect::swing).reversed())
            .toList());
  }

  private static Effect effect(MoneyCase given, Assumed assumed, double changeRatio) {
    return new Effect(
        assumed,
        MoneyStudy.of(assumed.scaled(given, 1 - changeRatio)).cost().total(),
        MoneyStudy.of(assumed.scaled(given, 1 + changeRatio)).cost().total());
  }
}
