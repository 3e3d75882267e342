package drumline.app.formula.face;

import drumline.app.formula.Formula;
import drumline.shop.problem.Problem;
import drumline.shop.quantity.UnitSystem;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a person gets who asks for formulas: the list, one with its inputs, or one with its answer.
 *
 * @param text what to show; empty when something is wrong
 * @param problems what is wrong
 */
public record AskFormula(String text, List<Problem> problems) {

  /** How the answer is written. */
  public enum Form {
    /** For a reader. */
    TEXT,
    /** For a program. */
    JSON
  }

  /** Copies the list. */
  public AskFormula {
    problems = List.copyOf(problems);
  }

  /** Whether there is nothing but problems. */
  public boolean isWrong() {
    return !problems.isEmpty();
  }

  /** The list of all formulas by topic. */
  public static AskFormula list(Form form) {
    return shown(
        form == Form.JSON
            ? FormulaJson.list(FormulaCatalogue.all())
            : FormulaPage.list(FormulaCatalogue.all()));
  }

  /**
   * One formula: with its inputs when no value is given, else with its answer.
   *
   * @param name name of the formula
   * @param pairs texts of the form {@code key=value}
   * @param units {@code metric} or {@code inch}: what numbers without unit mean, and how the answer
   *     is shown
   */
  public static AskFormula of(String name, List<String> pairs, String units, Form form) {
    Optional<UnitSystem> system = system(units);
    if (system.isEmpty()) {
      return wrong(
          Problem.error("units-unknown", "--units", "\"" + units + "\"", "metric or inch", ""));
    }
    Optional<Formula> formula = FormulaCatalogue.find(name);
    if (formula.isEmpty()) {
      return wrong(FormulaCatalogue.explain(name));
    }
    if (pairs.isEmpty()) {
      return shown(
          form == Form.JSON
              ? FormulaJson.about(formula.get())
              : FormulaPage.about(formula.get(), system.get()));
    }
    AskedFormula asked = AskedFormula.of(formula.get(), pairs, system.get());
    if (asked.isWrong()) {
      return new AskFormula("", asked.problems());
    }
    return shown(form == Form.JSON ? FormulaJson.answered(asked) : FormulaPage.answered(asked));
  }

  private static Optional<UnitSystem> system(String units) {
    return switch (units.strip().toLowerCase(Locale.ROOT)) {
      case "metric" -> Optional.of(UnitSystem.METRIC);
      case "inch" -> Optional.of(UnitSystem.INCH);
      default -> Optional.empty();
    };
  }

  private static AskFormula shown(String text) {
    return new AskFormula(text.stripTrailing(), List.of());
  }

  private static AskFormula wrong(Problem problem) {
    return new AskFormula("", List.of(problem));
  }
}
