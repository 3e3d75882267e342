package drumline.app.listing;

import drumline.route.rule.Allowances;
import drumline.route.rule.Capability;
import drumline.route.rule.Practice;
import drumline.route.rule.Rule;
import drumline.route.rule.RuleBook;
import drumline.shop.inquiry.Overrides;
import drumline.shop.material.IsoGroup;
import java.util.Locale;

/** The rules of the process as text, each with its words and source under it. */
public final class RuleListing {
  private static final double ALL_MM = 1000;

  private RuleListing() {}

  /** Rules, allowances, and what operations reach. */
  public static String text(Practice practice, Overrides overrides) {
    return "Rules\n"
        + rules(practice, overrides)
        + "\nAllowances\n"
        + allowances(practice)
        + "\nWhat operations reach\n"
        + capability(practice);
  }

  private static String rules(Practice practice, Overrides overrides) {
    TextTable table = new TextTable("rule", "kind", "state");
    for (Rule rule : RuleBook.all()) {
      String state =
          rule.freedom() == Rule.Freedom.FIXED
              ? "always on"
              : practice.uses(rule.id()) ? "on" : "off: " + reason(overrides, rule.id());
      table.row(rule.id(), word(rule.kind()), state);
      table.note(rule.text() + " Source: " + rule.source() + ".");
    }
    return table.text();
  }

  private static String reason(Overrides overrides, String ruleId) {
    return overrides.rulesOff().stream()
        .filter(off -> off.ruleId().equals(ruleId))
        .map(Overrides.RuleOff::reason)
        .reduce((first, second) -> second)
        .orElse("");
  }

  private static String allowances(Practice practice) {
    TextTable table = new TextTable("allowance", "amount", "what and whence");
    for (Allowances.Row row : practice.allowances().rows()) {
      table.row(row.name(), row.amount(), row.source());
    }
    return table.text();
  }

  private static String capability(Practice practice) {
    TextTable table =
        new TextTable(
            "operation", "group", "diameter", ">grade", ">care", ">Ra", ">care", "source");
    for (Capability row : practice.capability().rows()) {
      String span =
          row.aboveMm() > 0
              ? plain(row.aboveMm()) + " to " + plain(row.toMm()) + " mm"
              : row.toMm() >= ALL_MM ? "all" : "to " + plain(row.toMm()) + " mm";
      table.row(
          row.kind().words(),
          row.group().map(IsoGroup::name).orElse("all"),
          span,
          "IT " + row.gradeCount(),
          "IT " + row.careGradeCount(),
          plain(row.raUm()),
          plain(row.careRaUm()),
          row.source());
    }
    return table.text();
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }

  private static String plain(double value) {
    return String.valueOf(value).replaceFirst("\\.0$", "");
  }
}
