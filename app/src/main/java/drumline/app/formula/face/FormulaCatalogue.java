package drumline.app.formula.face;

import drumline.app.formula.Formula;
import drumline.app.formula.cut.CutCatalogue;
import drumline.app.formula.machine.MachineCatalogue;
import drumline.shop.problem.Problem;
import drumline.shop.quantity.NearestWord;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** All formulas that can be asked for by name. */
public final class FormulaCatalogue {
  private static final List<Formula> ALL =
      Stream.concat(CutCatalogue.all().stream(), MachineCatalogue.all().stream()).toList();

  private FormulaCatalogue() {}

  /** All formulas, topic by topic. */
  public static List<Formula> all() {
    return ALL;
  }

  /** The formula of a name; upper case, blanks and underscores do not matter. */
  public static Optional<Formula> find(String name) {
    String plain = name.strip().toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
    return ALL.stream().filter(formula -> formula.name().equals(plain)).findFirst();
  }

  /** What to say to a name that no formula has: names that are near, or that contain it. */
  public static Problem explain(String name) {
    String plain = name.strip().toLowerCase(Locale.ROOT);
    List<String> names = ALL.stream().map(Formula::name).toList();
    List<String> near =
        Stream.concat(
                names.stream().filter(known -> plain.length() > 2 && known.contains(plain)),
                NearestWord.among(plain, names, 3).stream())
            .distinct()
            .limit(5)
            .toList();
    return Problem.error(
        "formula-unknown",
        "formula",
        "\"" + name + "\"",
        "a name of the list that drumline formula prints",
        near.isEmpty() ? "" : "Maybe " + String.join(", ", near) + ".");
  }
}
