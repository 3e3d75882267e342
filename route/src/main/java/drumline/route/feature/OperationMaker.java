package drumline.route.feature;

import drumline.route.cut.Cut;
import drumline.route.draft.RouteDraft;
import drumline.route.draft.ToolChoice;
import drumline.route.rule.RuleBook;
import drumline.shop.machine.Equipment;
import drumline.shop.machine.SlideKind;
import drumline.shop.operation.CutRegion;
import drumline.shop.operation.CutSpec;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.SpindleCondition;
import drumline.shop.operation.WorkEnd;
import drumline.shop.problem.Problem;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Writes one operation into the draft, piece by piece. */
public final class OperationMaker {
  private final RouteDraft draft;
  private final OperationKind kind;
  private final String featureId;
  private final String ruleId;
  private String id;
  private String title;
  private WorkEnd end = WorkEnd.FRONT;
  private SlideKind drumSlide = SlideKind.CROSS;
  private SpindleCondition condition = SpindleCondition.TURNING;
  private Set<Equipment> equipment = Set.of();
  private List<CutRegion> removes = List.of();
  private String because = "";

  public OperationMaker(RouteDraft draft, OperationKind kind, String featureId, String ruleId) {
    this.draft = draft;
    this.kind = kind;
    this.featureId = featureId;
    this.ruleId = ruleId;
    this.id = featureId + "-" + kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    this.title = kind.words();
  }

  /** Tells operations of one kind on one feature apart. */
  public OperationMaker suffix(String text) {
    id = id + "-" + text;
    return this;
  }

  public OperationMaker title(String text) {
    title = text;
    return this;
  }

  public OperationMaker end(WorkEnd where) {
    end = where;
    return this;
  }

  /** The kind of drum slide; back-working slides take every direction. */
  public OperationMaker from(SlideKind slide) {
    drumSlide = slide;
    return this;
  }

  public OperationMaker needs(SpindleCondition spindle, Equipment... kinds) {
    condition = spindle;
    equipment = Set.of(kinds);
    return this;
  }

  public OperationMaker removes(List<CutRegion> regions) {
    removes = regions;
    return this;
  }

  /** What of this piece calls the rule, as a sentence behind the rule's own words. */
  public OperationMaker because(String sentence) {
    because = sentence.isEmpty() ? "" : " " + sentence;
    return this;
  }

  /** Adds the operation with its tool and cut, and gives it back. */
  public Operation add(ToolChoice choice, Cut cut) {
    Operation operation =
        new Operation(
            id,
            featureId,
            kind,
            title,
            end,
            slides(),
            equipment,
            condition,
            choice.tool(),
            held(cut.spec()),
            cut.loads(),
            removes,
            RuleBook.rule(ruleId).text() + because,
            ruleId,
            List.of(
                "cutting values: " + choice.window().source(),
                "cutting force: " + draft.inquiry().material().force().source(),
                "tool: " + choice.tool().family().source(),
                "rule: " + RuleBook.rule(ruleId).source()));
    draft.add(operation);
    power(operation);
    return operation;
  }

  /**
   * A held or controlled spindle turns to the operation's own angle first, and is clamped there.
   */
  private CutSpec held(CutSpec spec) {
    boolean stands = condition == SpindleCondition.HELD || condition == SpindleCondition.C_AXIS;
    return stands ? spec.withFixed(spec.fixedS() + draft.allowance("holdClamp")) : spec;
  }

  private void power(Operation operation) {
    double most = draft.allowance("liveToolPower");
    double power = operation.loads().toolPowerKw();
    if (power > most) {
      draft.problem(
          Problem.warning(
              "driven-tool-power",
              featureId,
              String.format(Locale.ROOT, "%.1f kW for %s", power, operation.tool().label()),
              String.format(Locale.ROOT, "%.1f kW of a driven tool", most),
              "Maybe take a smaller cutter, or more and lighter passes."));
    }
  }

  private Set<SlideKind> slides() {
    Set<SlideKind> kinds = EnumSet.noneOf(SlideKind.class);
    if (end != WorkEnd.BACK) {
      kinds.add(drumSlide);
    }
    if (end != WorkEnd.FRONT) {
      kinds.add(SlideKind.BACK);
    }
    return kinds;
  }
}
