package drumline.route.cut;

import drumline.cutting.force.ChipCompression;
import drumline.cutting.force.CuttingLoad;
import drumline.cutting.force.ForceSplit;
import drumline.cutting.tables.ChasingPassTable;
import drumline.cutting.threading.ChasingCut;
import drumline.cutting.threading.InfeedSchedule;
import drumline.route.draft.RouteDraft;
import drumline.shop.material.CuttingWindow;
import drumline.shop.material.IsoGroup;
import drumline.shop.material.Material;
import drumline.shop.thread.ThreadSize;
import java.util.ArrayList;
import java.util.List;

/**
 * Passes of a chased thread.
 *
 * <p>The table's number for steel, one more in stainless steel and titanium, one fewer in
 * non-ferrous metals; more where the first pass a1 = h·√(0.3/(N − 1)) would be deeper than the
 * window allows. Source: {@link ChasingPassTable}, from memory; 1–2 more or fewer by [BASIS] 2.5,
 * the lesser taken.
 */
final class ThreadPasses {
  private ThreadPasses() {}

  static int count(Material material, CuttingWindow window, double pitchMm, double depthMm) {
    List<ChasingPassTable.Row> rows = ChasingPassTable.rows();
    ChasingPassTable.Row last = rows.get(rows.size() - 1);
    int steel =
        pitchMm <= last.pitchMm()
            ? ChasingPassTable.passesCount(pitchMm)
            : (int) Math.ceil(last.passesCount() * pitchMm / last.pitchMm());
    int usual = steel + further(material.group());
    int first = 1 + (int) Math.ceil(0.3 * Math.pow(depthMm / window.depthHighMm(), 2) - 1e-9);
    return Math.max(usual, first);
  }

  /** The load of the heaviest pass, with an eased first pass, both flanks cutting. */
  static CuttingLoad heaviest(
      RouteDraft draft, ThreadSize size, double depthMm, int passesCount, double revPerMin) {
    ChasingCut cut =
        new ChasingCut(size.angleDeg(), 0, size.majorMm(), ForceSplit.STRAIGHT_IN.feedForceRatio());
    List<Double> depths = new ArrayList<>(List.of(0.0));
    depths.addAll(InfeedSchedule.easedFirstMm(depthMm, passesCount));
    CuttingLoad heaviest = null;
    for (int i = 1; i < depths.size(); i++) {
      CuttingLoad load =
          cut.load(
              SpecBuilder.constants(draft.inquiry().material()),
              SpecBuilder.worn(ChipCompression.GROOVING),
              depths.get(i - 1),
              depths.get(i),
              revPerMin);
      if (heaviest == null || load.mainForceN() > heaviest.mainForceN()) {
        heaviest = load;
      }
    }
    if (heaviest == null) {
      throw new IllegalArgumentException("passesCount: " + passesCount + ", allowed: 1 or more");
    }
    return heaviest;
  }

  private static int further(IsoGroup group) {
    return switch (group) {
      case M, S, H -> 1;
      case N -> -1;
      case P, K -> 0;
    };
  }
}
