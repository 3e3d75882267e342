package drumline.app.shelf;

import drumline.app.layout.KeptLayout;
import drumline.app.layout.LaidOut;
import drumline.app.layout.LayoutBench;
import drumline.app.study.MachineStudy;
import drumline.app.study.PlannedLayout;
import drumline.app.study.SearchResult;
import drumline.shop.layout.Layout;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A kept layout on the inquiry as it stands.
 *
 * @param layoutId its number in the store
 * @param keptLayout as it is kept
 * @param bench where it is laid out
 * @param layout its places, as far as operations and slides are still there
 * @param isOutdated whether the text was changed after it was made
 * @param boundS its bound, where it still holds
 * @param notes what a person should know
 */
public record LayoutCase(
    long layoutId,
    KeptLayout keptLayout,
    LayoutBench bench,
    Layout layout,
    boolean isOutdated,
    OptionalDouble boundS,
    List<String> notes) {

  public boolean isProvenOptimal() {
    return keptLayout.isProvenOptimal() && boundS.isPresent();
  }

  /** As a study, if it can be priced. */
  public Optional<MachineStudy> study(LaidOut laid) {
    if (laid.money().isEmpty()) {
      return Optional.empty();
    }
    SearchResult search =
        new SearchResult(boundS.orElse(0), isProvenOptimal(), keptLayout.wallMs(), notes);
    return Optional.of(
        new MachineStudy(
            bench.inquiry(),
            bench.machine(),
            bench.route(),
            Optional.of(PlannedLayout.of(bench, laid, search, Optional.empty())),
            bench.route().problems()));
  }
}
