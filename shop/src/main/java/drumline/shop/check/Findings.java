package drumline.shop.check;

import drumline.shop.problem.Problem;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Collects what the checks find; every place is the id of an element. */
final class Findings {

  private final List<Problem> problems = new ArrayList<>();

  void error(String code, String id, String found, String allowed) {
    error(code, id, found, allowed, "");
  }

  void error(String code, String id, String found, String allowed, String hint) {
    problems.add(Problem.error(code, id, found, allowed, hint));
  }

  void warning(String code, String id, String found, String allowed) {
    problems.add(Problem.warning(code, id, found, allowed, ""));
  }

  List<Problem> problems() {
    return problems;
  }

  /** A length as messages show it: at most three decimals, with its unit. */
  static String mm(double valueMm) {
    return BigDecimal.valueOf(valueMm)
            .setScale(3, RoundingMode.HALF_UP)
            .stripTrailingZeros()
            .toPlainString()
        + " mm";
  }
}
