package drumline.route.feature;

import static drumline.shop.operation.OperationKind.BURNISH;
import static drumline.shop.operation.OperationKind.DRILL;
import static drumline.shop.operation.OperationKind.FINISH_BORE;
import static drumline.shop.operation.OperationKind.FINISH_TURN;
import static drumline.shop.operation.OperationKind.REAM;
import static drumline.shop.operation.OperationKind.ROUGH_TURN;

import drumline.route.draft.RouteDraft;
import drumline.route.rule.Capability;
import drumline.route.rule.Capability.Reach;
import drumline.shop.contour.BoreStep;
import drumline.shop.contour.OutsideStep;
import drumline.shop.material.CuttingProcess;
import drumline.shop.operation.OperationKind;
import drumline.shop.tolerance.Tolerance;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/**
 * What a surface asks for, and which operations reach it.
 *
 * @param draft the route it is for
 * @param id step of the contour
 * @param gradeCount ISO 286 grade, counted from the width where the print gives none; 16 is
 *     coarsest
 * @param roughnessUm Ra, 0 if the print asks for none
 * @param diameterMm largest diameter
 * @param isTaper whether it is one, which roughing and drilling never leave true
 */
public record Surface(
    RouteDraft draft,
    String id,
    int gradeCount,
    double roughnessUm,
    double diameterMm,
    boolean isTaper) {
  private static final int COARSEST = 16;

  /** What an outside step asks for. */
  public static Surface of(RouteDraft draft, OutsideStep step) {
    double diameter = step.largestDiameterMm();
    return new Surface(
        draft,
        step.id(),
        grade(step.tolerance(), diameter),
        step.roughnessRaUm(),
        diameter,
        step.isTaper());
  }

  /** What a bore step asks for. */
  public static Surface of(RouteDraft draft, BoreStep step) {
    double diameter = step.largestDiameterMm();
    return new Surface(
        draft,
        step.id(),
        grade(step.tolerance(), diameter),
        step.roughnessRaUm(),
        diameter,
        step.isTaper());
  }

  private static int grade(Tolerance tolerance, double nominalMm) {
    return tolerance
        .itGrade()
        .orElseGet(() -> tolerance.nearestItGrade(nominalMm).orElse(COARSEST));
  }

  /** Rule {@code finish-by-grade}: roughing does not leave it as a rule. */
  public boolean needsFinishTurn() {
    return isTaper || reach(ROUGH_TURN) != Reach.USUAL;
  }

  /** Rules {@code finish-bore} and {@code ream-bore}: the drill does not leave it as a rule. */
  public boolean needsFinishBore() {
    return isTaper || reach(DRILL) != Reach.USUAL;
  }

  /** Rule {@code rough-bore}: only a light last cut, after one that trues the hole, reaches it. */
  public boolean needsRoughBore() {
    return capability(FINISH_BORE).map(c -> gradeCount < c.gradeCount()).orElse(false);
  }

  /** Rule {@code ream-bore}: a reamer's own grades, as a rule or with care. */
  public boolean isReamed() {
    return capability(REAM)
        .map(c -> gradeCount >= c.careGradeCount() && gradeCount <= c.gradeCount())
        .orElse(false);
  }

  /** How well an operation reaches it; as a rule, where the table does not know the operation. */
  public Reach reach(OperationKind kind) {
    return capability(kind).map(c -> c.reach(gradeCount, roughnessUm)).orElse(Reach.USUAL);
  }

  private Optional<Capability> capability(OperationKind kind) {
    return draft.practice().capability().find(kind, draft.inquiry().material().group(), diameterMm);
  }

  /**
   * What is asked for, what the lesser operation leaves and what this one reaches, as a sentence.
   */
  public String because(OperationKind lesser, OperationKind chosen) {
    StringBuilder words = new StringBuilder("Asked here: " + asked() + "; ");
    capability(lesser).ifPresent(c -> words.append(c.words()).append("; "));
    capability(chosen).ifPresent(c -> words.append(c.words()).append("."));
    return words.toString();
  }

  /** Grade and roughness as a sheet says them. */
  public String asked() {
    String ra =
        roughnessUm > 0
            ? String.format(Locale.ROOT, "Ra %.2f", roughnessUm)
                .replaceFirst("0$", "")
                .replaceFirst("\\.0$", "")
            : "no roughness";
    return "IT " + gradeCount + " and " + ra;
  }

  /** What operations of some kinds reach at best, for a problem. */
  public String reachable(OperationKind... kinds) {
    return Arrays.stream(kinds)
        .flatMap(kind -> capability(kind).stream())
        .sorted(Comparator.comparingInt(Capability::careGradeCount))
        .map(Capability::words)
        .reduce((a, b) -> a + "; " + b)
        .orElse("what the table of capability says");
  }

  /** Whether no operation for outside surfaces reaches it. */
  public boolean isOutOfReachOutside() {
    return reach(FINISH_TURN) == Reach.NOT && !isBurnished(FINISH_TURN);
  }

  /** Whether no operation for bores reaches it. */
  public boolean isOutOfReachInside() {
    return reach(FINISH_BORE) == Reach.NOT
        && (isTaper || reach(REAM) == Reach.NOT)
        && !isBurnished(FINISH_BORE);
  }

  /**
   * Rule {@code burnish}: the cut before reaches the grade but not the roughness, which rolls
   * reach.
   *
   * @param before kind of the finishing cut
   */
  public boolean isBurnished(OperationKind before) {
    Optional<Capability> cut = capability(before);
    Optional<Capability> rolls = capability(BURNISH);
    return !isTaper
        && draft.uses("burnish")
        && draft.inquiry().material().findWindow(CuttingProcess.BURNISH).isPresent()
        && cut.isPresent()
        && rolls.isPresent()
        && cut.get().reach(COARSEST, roughnessUm) == Reach.NOT
        && gradeCount >= cut.get().careGradeCount()
        && rolls.get().reach(COARSEST, roughnessUm) != Reach.NOT;
  }

  /** Roughness that the finishing cut itself must leave, in µm. */
  public double cutRoughnessUm(OperationKind before) {
    return isBurnished(before)
        ? capability(before).map(Capability::raUm).orElse(roughnessUm)
        : roughnessUm;
  }
}
