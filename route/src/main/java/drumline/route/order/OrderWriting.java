package drumline.route.order;

import static drumline.shop.operation.OperationKind.*;

import drumline.route.draft.RouteDraft;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.WorkEnd;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** What must come before what, on the contours themselves. */
public final class OrderWriting {
  private static final Set<OperationKind> FINISHING =
      EnumSet.of(FINISH_TURN, FINISH_BORE, REAM, BURNISH);
  private static final Set<OperationKind> HEAVY = EnumSet.of(ROUGH_TURN, FORM_TURN);

  private final RouteDraft draft;

  /** Orders for the operations that are in the draft now. */
  public OrderWriting(RouteDraft draft) {
    this.draft = draft;
  }

  /** Writes all orders and pair rules. */
  public void write() {
    faces();
    outside();
    for (WorkEnd end : List.of(WorkEnd.FRONT, WorkEnd.BACK)) {
      hole(end);
    }
    for (Operation smooth : draft.where(o -> o.kind() == BURNISH)) {
      draft.orderAll(
          draft.of(smooth.featureId(), FINISH_TURN, FINISH_BORE, REAM), List.of(smooth), "burnish");
    }
    new FeatureOrders(draft).write();
    new PairWriting(draft).write();
    parting();
  }

  /** Whether an operation gives a surface its final size. */
  static boolean isFinishing(Operation operation) {
    return FINISHING.contains(operation.kind());
  }

  private void faces() {
    for (Operation face : draft.of("front-face", FACE)) {
      draft.orderAll(
          List.of(face),
          draft.where(
              o ->
                  o.end() == WorkEnd.FRONT
                      && (o.kind() == SPOT
                          || o.kind() == DRILL
                          || o.kind() == FACE_DRILL
                          || o.kind() == FACE_GROOVE
                          || isFinishing(o))),
          "face-first");
    }
    for (Operation face : draft.of("back-face", FACE)) {
      draft.orderAll(
          List.of(face),
          draft.where(o -> o.end() == WorkEnd.BACK && !o.id().equals(face.id())),
          "face-first");
    }
  }

  private void outside() {
    List<Operation> rough = draft.where(o -> o.kind() == ROUGH_TURN);
    for (int i = 1; i < rough.size(); i++) {
      draft.order(rough.get(i - 1), rough.get(i), "rough-in-layers");
    }
    List<Operation> heavy = draft.where(o -> HEAVY.contains(o.kind()) && notEdge(o));
    List<Operation> finish = draft.where(o -> o.kind() == FINISH_TURN);
    draft.orderAll(draft.where(o -> o.kind() == ROUGH_TURN), finish, "finish-after-rough");
    for (Operation one : heavy) {
      draft.orderAll(List.of(one), draft.of(one.featureId(), FINISH_TURN), "finish-after-rough");
    }
    double limit = 0.4 * draft.inquiry().bar().sizeMm();
    draft.orderAll(
        draft.where(
            o -> o.kind() == DRILL && o.end() == WorkEnd.FRONT && o.tool().sizeMm() >= limit),
        finish,
        "finish-outside-after-drilling");
    backEdge();
  }

  /** The edge at the cut-off follows the turning of its step. */
  private void backEdge() {
    for (Operation edge : draft.where(o -> !notEdge(o))) {
      draft.orderAll(
          draft.of(edge.featureId(), ROUGH_TURN, FINISH_TURN, FORM_TURN).stream()
              .filter(OrderWriting::notEdge)
              .toList(),
          List.of(edge),
          "back-edge");
    }
  }

  private static boolean notEdge(Operation operation) {
    return !operation.ruleId().equals("back-edge");
  }

  private void hole(WorkEnd end) {
    List<Operation> spots = draft.where(o -> o.kind() == SPOT && o.end() == end);
    List<Operation> drills = draft.where(o -> o.kind() == DRILL && o.end() == end);
    List<Operation> rough =
        draft.where(o -> (o.kind() == ROUGH_BORE || o.kind() == COUNTERBORE) && o.end() == end);
    List<Operation> finish =
        draft.where(o -> (o.kind() == FINISH_BORE || o.kind() == REAM) && o.end() == end);
    draft.orderAll(spots, drills, "spot-before-drill");
    for (int i = 1; i < drills.size(); i++) {
      draft.order(drills.get(i - 1), drills.get(i), drills.get(i).ruleId());
    }
    for (Operation last : drills.isEmpty() ? drills : List.of(drills.get(drills.size() - 1))) {
      draft.orderAll(List.of(last), rough, "finish-after-rough");
      draft.orderAll(List.of(last), finish, "finish-after-rough");
    }
    draft.orderAll(rough, finish, "finish-after-rough");
  }

  /** Everything on the drum before the cut-off, everything at the back after it. */
  private void parting() {
    List<Operation> cut = draft.where(o -> o.kind() == CUT_OFF);
    draft.orderAll(
        draft.where(o -> o.end() == WorkEnd.FRONT && o.kind() != CUT_OFF), cut, "cut-off-last");
    draft.orderAll(cut, draft.where(o -> o.end() == WorkEnd.BACK), "back-after-cut-off");
  }
}
