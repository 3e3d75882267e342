package drumline.route.order;

import static drumline.shop.operation.OperationKind.FACE;
import static drumline.shop.operation.OperationKind.KNURL;
import static drumline.shop.operation.OperationKind.THREAD_ROLL;

import drumline.route.draft.RouteDraft;
import drumline.shop.contour.Relation;
import drumline.shop.machine.SlideKind;
import drumline.shop.operation.Operation;
import drumline.shop.operation.PairRule.Kind;
import drumline.shop.operation.WorkEnd;
import drumline.shop.problem.Problem;
import java.util.List;

/** Which operations share a position, or never do, or never cut together. */
final class PairWriting {
  private final RouteDraft draft;

  PairWriting(RouteDraft draft) {
    this.draft = draft;
  }

  void write() {
    draft.inquiry().part().relations().forEach(this::relation);
    List<Operation> pressing = draft.where(o -> o.kind() == THREAD_ROLL || o.kind() == KNURL);
    List<Operation> finishing =
        draft.where(o -> OrderWriting.isFinishing(o) && o.end() == WorkEnd.FRONT);
    for (Operation press : pressing) {
      for (Operation finish : finishing) {
        draft.pair(Kind.OTHER_POSITION, press, finish, "not-with-finish");
      }
    }
    for (Operation face : draft.of("front-face", FACE)) {
      for (Operation inside :
          draft.where(o -> o.end() == WorkEnd.FRONT && o.slides().contains(SlideKind.END))) {
        draft.pair(Kind.NOT_TOGETHER, face, inside, "tools-meet");
      }
    }
  }

  private void relation(Relation relation) {
    if (relation.valueMm() > draft.allowance("tightRelation")) {
      return;
    }
    List<Operation> one = finishing(relation.ofElement());
    List<Operation> other = finishing(relation.toElement());
    for (Operation a : one) {
      for (Operation b : other) {
        if (a.end() == b.end()) {
          draft.pair(Kind.SAME_POSITION, a, b, "one-grip");
        } else {
          draft.problem(
              Problem.warning(
                  "relation-across-ends",
                  relation.ofElement() + " to " + relation.toElement(),
                  "finished from both ends; the grip of the pick-up spindle enters",
                  "both from one end for a zone of " + relation.valueMm() + " mm",
                  "Maybe make both from the front, or prove the pick-up spindle's run-out."));
        }
      }
    }
  }

  private List<Operation> finishing(String element) {
    return draft.of(element).stream().filter(OrderWriting::isFinishing).toList();
  }
}
