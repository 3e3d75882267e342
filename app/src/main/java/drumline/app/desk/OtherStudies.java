package drumline.app.desk;

import drumline.app.shelf.LayoutCases;
import drumline.app.shelf.Shelves;
import drumline.app.study.MachineStudy;
import drumline.store.entry.PlanEntry;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The same inquiry as it is laid out on other machines: the newest layout of each that holds. */
final class OtherStudies {
  private final Shelves shelves;
  private final LayoutCases cases;

  OtherStudies(Shelves shelves, LayoutCases cases) {
    this.shelves = shelves;
    this.cases = cases;
  }

  List<MachineStudy> of(Shelves.State state, MachineStudy present) {
    Set<String> seen = new HashSet<>(Set.of(present.machine().name()));
    List<MachineStudy> others = new ArrayList<>();
    for (PlanEntry entry : shelves.store().plans().list(state.entry().id())) {
      if (!seen.contains(entry.head().machine())) {
        cases
            .stored(state, entry.id())
            .filter(one -> !one.isOutdated())
            .flatMap(one -> one.study(cases.lay(state, one)))
            .ifPresent(
                study -> {
                  seen.add(study.machine().name());
                  others.add(study);
                });
      }
    }
    return others;
  }
}
