package drumline.route.driven;

import drumline.cutting.lettering.Lettering;
import drumline.cutting.lettering.StrokeFont;
import drumline.route.cut.LightWork;
import drumline.route.draft.RouteDraft;
import drumline.route.feature.OperationMaker;
import drumline.shop.feature.Engraving;
import drumline.shop.machine.Equipment;
import drumline.shop.machine.SlideKind;
import drumline.shop.material.CuttingProcess;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.SpindleCondition;
import drumline.shop.operation.WorkEnd;
import drumline.shop.problem.Problem;
import drumline.shop.tooling.ToolKind;
import java.util.Locale;

/** Engraved text, along the strokes of the program's own letters: rule {@code engrave}. */
public final class EngravingMaking {
  private final RouteDraft draft;

  /** For a draft. */
  public EngravingMaking(RouteDraft draft) {
    this.draft = draft;
  }

  /** Writes them into the draft. */
  public void write() {
    draft.inquiry().part().features(Engraving.class).forEach(this::engraving);
  }

  private void engraving(Engraving engraving) {
    StrokeFont font = StrokeFont.plain();
    String text = engraving.text().toUpperCase(Locale.ROOT);
    boolean known =
        text.chars().allMatch(c -> c == ' ' || font.characters().indexOf(c) >= 0)
            && !text.isBlank();
    if (!known) {
      draft.problem(
          Problem.error(
              "text-not-in-font",
              engraving.id(),
              "“" + engraving.text() + "”",
              "one or more of " + font.characters() + " and spaces",
              "Maybe leave the sign out, or write it in letters."));
      return;
    }
    engrave(engraving, font.line(text, engraving.heightMm()));
  }

  private void engrave(Engraving engraving, Lettering lettering) {
    boolean outside = engraving.place() == Engraving.Place.OUTSIDE;
    WorkEnd end = engraving.place() == Engraving.Place.BACK_FACE ? WorkEnd.BACK : WorkEnd.FRONT;
    draft
        .tool(
            engraving.id(),
            ToolKind.ENGRAVING,
            CuttingProcess.ENGRAVE,
            draft.allowance("engraveTip"))
        .ifPresent(
            choice ->
                new OperationMaker(draft, OperationKind.ENGRAVE, engraving.id(), "engrave")
                    .title("engrave “" + engraving.text() + "”")
                    .end(end)
                    .from(outside ? SlideKind.CROSS : SlideKind.END)
                    .needs(SpindleCondition.C_AXIS, Equipment.LIVE_TOOL, Equipment.C_AXIS)
                    .add(choice, LightWork.engrave(draft, choice, lettering, engraving.depthMm())));
  }
}
