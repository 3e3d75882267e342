package drumline.shape.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.shape.Prints;
import drumline.shape.proof.CutCheck;
import drumline.shape.proof.CutNote;
import drumline.shape.workpiece.PositionWork;
import drumline.shape.workpiece.WorkpieceStates;
import drumline.shop.operation.CutRegion;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.Route;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Cuts whose loads assume 1 mm a pass, on bar of 30 mm. */
class CutCheckTest {

  private static final Bar BAR = Prints.round(30);
  private static final Part PART = Prints.turned(40, Prints.step("o", 0, 40, 26));
  private static final Operation OFF =
      Prints.operation("off", OperationKind.CUT_OFF, CutRegion.rectangle(40, 43, 0, 16));

  @Test
  void cutAsAssumedIsNotTold() {
    assertThat(check(turn("t", 14), OFF).notes()).isEmpty();
    assertThat(check(turn("t", 14), OFF).comparedCount()).isEqualTo(1);
  }

  @Test
  void cutThatTakesWhatAnEarlierOneLeftIsToldWithItsDepth() {
    CutCheck check = check(turn("t", 13), OFF);
    assertThat(check.notes())
        .singleElement()
        .extracting(CutNote::kind)
        .isEqualTo(CutNote.Kind.DEEPER_THAN_ASSUMED);
    assertThat(check.notes().get(0).words())
        .contains("takes 2.00 mm a pass in the mean", "assume 1.00 mm");
  }

  @Test
  void meanDepthOfALongRingIsItsThickness() {
    WorkpieceStates states = states(turn("t", 13));
    assertThat(CutCheck.meanDepthMm(states.findRemoval("t").orElseThrow()))
        .isCloseTo(2, within(0.01));
  }

  @Test
  void cutThatFindsNothingIsTold() {
    assertThat(check(turn("t", 14), turn("again", 14), OFF).notes())
        .extracting(CutNote::kind)
        .containsExactly(CutNote.Kind.CUTS_NOTHING);
  }

  @Test
  void workAfterPartingIsTold() {
    assertThat(check(OFF, turn("late", 14)).notes())
        .extracting(CutNote::kind)
        .containsExactly(CutNote.Kind.AFTER_PARTING);
  }

  private static Operation turn(String id, double toRMm) {
    return Prints.operation(id, OperationKind.ROUGH_TURN, CutRegion.rectangle(0, 40, toRMm, 16));
  }

  private static WorkpieceStates states(Operation... cuts) {
    return WorkpieceStates.of(BAR, PART, List.of(new PositionWork(1, List.of(cuts))));
  }

  private static CutCheck check(Operation... cuts) {
    Route route = new Route(List.of(cuts), List.of(), List.of(), List.of());
    return CutCheck.of(route, states(cuts), 1);
  }
}
