package drumline.app.formula.machine;

import drumline.app.formula.Formula;
import java.util.List;
import java.util.stream.Stream;

/** All formulas of the machine and what surrounds it. */
public final class MachineCatalogue {
  private MachineCatalogue() {}

  /** The formulas, in the order in which a person would look for them. */
  public static List<Formula> all() {
    return Stream.of(
            DriveFormulas.all(),
            GripFormulas.all(),
            StiffnessFormulas.all(),
            LifeFormulas.all(),
            MoneyFormulas.all(),
            StandardFormulas.all())
        .flatMap(List::stream)
        .toList();
  }
}
