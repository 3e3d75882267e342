package drumline.route.rule;

import drumline.shop.inquiry.Overrides;
import drumline.shop.material.IsoGroup;
import drumline.shop.problem.Problem;
import drumline.shop.quantity.NearestWord;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * The practice of a shop: what ships, and over it what the user does otherwise.
 *
 * @param practice what is used
 * @param changes what differs from what ships, in the order written
 * @param problems names that are not there, rules that are fixed, amounts that are none
 */
public record PracticeReading(
    Practice practice, List<PracticeChange> changes, List<Problem> problems) {

  /** Copies the lists. */
  public PracticeReading {
    changes = List.copyOf(changes);
    problems = List.copyOf(problems);
  }

  /** Reads the overrides of an inquiry. */
  public static PracticeReading of(Overrides overrides) {
    Run run = new Run();
    overrides.rulesOff().forEach(run::rule);
    overrides.allowances().forEach(run::allowance);
    overrides.capability().forEach(run::capability);
    return new PracticeReading(
        new Practice(run.allowances, run.table, run.off), run.changes, run.problems);
  }

  /** One reading. */
  private static final class Run {
    private Allowances allowances = Practice.shipped().allowances();
    private CapabilityTable table = Practice.shipped().capability();
    private final Set<String> off = new HashSet<>();
    private final List<PracticeChange> changes = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();

    void rule(Overrides.RuleOff asked) {
      Optional<Rule> rule = RuleBook.find(asked.ruleId());
      if (rule.isEmpty()) {
        List<String> known =
            RuleBook.all().stream()
                .filter(r -> r.freedom() == Rule.Freedom.MAY)
                .map(Rule::id)
                .toList();
        unknown("unknown-rule", asked.where(), asked.ruleId(), known);
      } else if (rule.get().freedom() == Rule.Freedom.FIXED) {
        problems.add(
            Problem.error(
                "rule-fixed",
                asked.where(),
                "rule " + asked.ruleId() + " off",
                "rules that drumline rules lists as may",
                "Maybe leave out or pin single operations under wishes instead."));
      } else {
        off.add(asked.ruleId());
        changes.add(
            new PracticeChange(
                "rule " + asked.ruleId(), "on", "off: " + asked.reason(), asked.where()));
      }
    }

    void allowance(Overrides.Allowance asked) {
      Optional<Allowances.Row> row = allowances.findRow(asked.name());
      if (row.isEmpty()) {
        List<String> known = allowances.rows().stream().map(Allowances.Row::name).toList();
        unknown("unknown-allowance", asked.where(), asked.name(), known);
        return;
      }
      Optional<Allowances> changed = allowances.findWithAmount(asked.name(), asked.amount());
      if (changed.isEmpty()) {
        problems.add(
            Problem.error(
                "allowance-amount",
                asked.where(),
                "\"" + asked.amount() + "\"",
                "0 or more in " + row.get().unit() + ", such as \"" + row.get().amount() + "\"",
                ""));
        return;
      }
      allowances = changed.get();
      changes.add(
          new PracticeChange(
              "allowance " + asked.name(), row.get().amount(), asked.amount(), asked.where()));
    }

    void capability(Overrides.Reached asked) {
      Capability row =
          new Capability(
              CapabilityTable.kind(asked.operation()).orElseThrow(),
              asked.group().isEmpty()
                  ? Optional.empty()
                  : Optional.of(IsoGroup.valueOf(asked.group().toUpperCase(Locale.ROOT))),
              asked.aboveMm(),
              asked.toMm(),
              asked.gradeCount(),
              asked.careGradeCount(),
              asked.raUm(),
              asked.careRaUm(),
              asked.source());
      double middle = (asked.aboveMm() + Math.min(asked.toMm(), 2 * asked.aboveMm() + 20)) / 2;
      String was =
          table
              .find(row.kind(), row.group().orElse(IsoGroup.P), middle)
              .map(Capability::words)
              .orElse("nothing");
      table = table.with(row);
      changes.add(
          new PracticeChange(
              "capability of " + asked.operation(),
              was,
              row.words() + "; " + asked.source(),
              asked.where()));
    }

    private void unknown(String code, String where, String name, List<String> known) {
      List<String> near = NearestWord.among(name, known, 1);
      problems.add(
          Problem.error(
              code,
              where,
              "\"" + name + "\"",
              "one of " + String.join(", ", known),
              near.isEmpty() ? "" : "Maybe \"" + near.get(0) + "\"."));
    }
  }
}
