package drumline.app.formula.cut;

import drumline.app.formula.Formula;
import java.util.List;
import java.util.stream.Stream;

/** All formulas of the cut. */
public final class CutCatalogue {
  private CutCatalogue() {}

  /** The formulas, in the order in which a person would look for them. */
  public static List<Formula> all() {
    return Stream.of(
            ForceFormulas.all(),
            TurningFormulas.all(),
            PartingFormulas.all(),
            DrillingFormulas.all(),
            ThreadFormulas.all(),
            TapFormulas.all(),
            RollingFormulas.all(),
            FinishFormulas.all(),
            MillingFormulas.all(),
            CrossWorkFormulas.all(),
            SlottingFormulas.all())
        .flatMap(List::stream)
        .toList();
  }
}
