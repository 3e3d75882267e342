package drumline.shop.inquiry;

import java.util.List;
import java.util.stream.Stream;

/**
 * Rules and figures of the process that a shop does otherwise, in the order written; a later one
 * counts. Figures of materials, tools and machines are changed in their libraries instead.
 *
 * @param rulesOff rules that are not to be used
 * @param allowances stock allowances, standard times and limits
 * @param capability what operations reach
 */
public record Overrides(
    List<RuleOff> rulesOff, List<Allowance> allowances, List<Reached> capability) {

  /** Nothing is done otherwise. */
  public static final Overrides NONE = new Overrides(List.of(), List.of(), List.of());

  /** Copies the lists. */
  public Overrides {
    rulesOff = List.copyOf(rulesOff);
    allowances = List.copyOf(allowances);
    capability = List.copyOf(capability);
  }

  /**
   * A rule that is not used.
   *
   * @param ruleId its id
   * @param reason why, in the user's words
   * @param where file, line and column
   */
  public record RuleOff(String ruleId, String reason, String where) {}

  /**
   * An allowance with another amount.
   *
   * @param name its name in the table
   * @param amount number and unit as written
   * @param where file, line and column
   */
  public record Allowance(String name, String amount, String where) {}

  /**
   * What an operation reaches.
   *
   * @param operation kind of operation, words joined by hyphens
   * @param group letter of ISO 513, or empty for all
   * @param aboveMm diameters above this, in mm
   * @param toMm and up to this
   * @param gradeCount ISO 286 grade as a rule
   * @param careGradeCount grade with care
   * @param raUm Ra as a rule, in µm
   * @param careRaUm Ra with care, in µm
   * @param source where it comes from
   * @param where file, line and column
   */
  public record Reached(
      String operation,
      String group,
      double aboveMm,
      double toMm,
      int gradeCount,
      int careGradeCount,
      double raUm,
      double careRaUm,
      String source,
      String where) {}

  /** These, then others. */
  public Overrides and(Overrides later) {
    return new Overrides(
        joined(rulesOff, later.rulesOff),
        joined(allowances, later.allowances),
        joined(capability, later.capability));
  }

  private static <T> List<T> joined(List<T> first, List<T> second) {
    return Stream.concat(first.stream(), second.stream()).toList();
  }
}
