package drumline.route.thread;

import static drumline.route.feature.Words.mm;

import drumline.route.cut.LightWork;
import drumline.route.draft.RouteDraft;
import drumline.route.feature.OperationMaker;
import drumline.route.feature.Places;
import drumline.shop.feature.Knurl;
import drumline.shop.material.CuttingProcess;
import drumline.shop.operation.OperationKind;
import drumline.shop.tooling.ToolKind;
import java.util.Locale;

/** Knurls: rule {@code knurl}. */
public final class KnurlMaking {
  private final RouteDraft draft;

  /** For a draft. */
  public KnurlMaking(RouteDraft draft) {
    this.draft = draft;
  }

  /** Writes them into the draft. */
  public void write() {
    draft.inquiry().part().features(Knurl.class).forEach(this::knurl);
  }

  private void knurl(Knurl knurl) {
    double length = knurl.toZMm() - knurl.fromZMm();
    double diameter = Places.outsideDiameterMm(draft.inquiry().part(), knurl.fromZMm(), length);
    draft
        .tool(knurl.id(), ToolKind.KNURLING, CuttingProcess.KNURL, diameter)
        .ifPresent(
            choice ->
                new OperationMaker(draft, OperationKind.KNURL, knurl.id(), "knurl")
                    .title(
                        "knurl "
                            + knurl.form().name().toLowerCase(Locale.ROOT)
                            + " "
                            + mm(knurl.pitchMm()))
                    .add(choice, LightWork.knurl(draft, choice, length, diameter)));
  }
}
