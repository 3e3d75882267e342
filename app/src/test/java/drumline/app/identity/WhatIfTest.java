package drumline.app.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drumline.app.ask.OpenInquiry;
import drumline.app.ask.Opened;
import drumline.app.ask.PlanInquiry;
import drumline.app.ask.SearchWatch;
import drumline.app.layout.Breach;
import drumline.app.layout.Breaches;
import drumline.app.layout.LaidOut;
import drumline.app.layout.LayoutBench;
import drumline.app.layout.Move;
import drumline.app.layout.Moves;
import drumline.app.study.MachineStudy;
import drumline.app.study.PlannedLayout;
import drumline.route.rule.Allowances;
import drumline.shape.workpiece.PositionState;
import drumline.shop.layout.Layout;
import drumline.shop.operation.Operation;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** A layout that was moved is the same as one laid out from nothing. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class WhatIfTest {
  private MachineStudy study;
  private PlannedLayout plan;
  private LayoutBench bench;

  @BeforeAll
  void plan() {
    Opened opened = OpenInquiry.example("valve-seat-body.yaml");
    study =
        PlanInquiry.plan(opened, List.of(), 0.3, 1, SearchWatch.silent()).findBest().orElseThrow();
    plan = study.plan().orElseThrow();
    bench = freshBench();
  }

  private LayoutBench freshBench() {
    return new LayoutBench(study.inquiry(), study.machine(), study.route(), Allowances.shipped());
  }

  private static Move to(String operationId, int position) {
    return new Move(operationId, null, position, null, null, null);
  }

  @Test
  void withoutMovesTheLayoutIsThePlanned() {
    LaidOut laid = bench.lay(new Moves(bench).apply(plan.layout(), List.of()));
    assertThat(laid.timeline()).isEqualTo(plan.timeline());
    assertThat(laid.audit()).isEqualTo(plan.audit());
    assertThat(laid.money().orElseThrow()).isEqualTo(plan.money());
  }

  @Test
  void whatIsRememberedIsWhatWouldBeReckoned() {
    for (int seed = 0; seed < 12; seed++) {
      Random random = new Random(seed);
      Layout layout = plan.layout();
      for (int step = 0; step < 5; step++) {
        layout = new Moves(bench).apply(layout, List.of(move(random)));
        LaidOut remembered = bench.lay(layout);
        LaidOut fresh = freshBench().lay(layout);
        String as = "seed " + seed + " step " + step;
        assertThat(remembered.timeline()).as(as).isEqualTo(fresh.timeline());
        assertThat(remembered.audit()).as(as).isEqualTo(fresh.audit());
        assertThat(remembered.moneyObstacle()).as(as).isEqualTo(fresh.moneyObstacle());
        assertThat(remembered.money()).as(as).isEqualTo(fresh.money());
        assertSameStates(as, remembered, fresh);
      }
    }
  }

  /** Volumes agree to a cubic tenth of a millimetre: corners lie on a grid of nanometres. */
  private static void assertSameStates(String as, LaidOut one, LaidOut other) {
    for (int i = 0; i < one.states().positions().size(); i++) {
      PositionState mine = one.states().positions().get(i);
      PositionState theirs = other.states().positions().get(i);
      assertThat(mine.hold()).as(as).isEqualTo(theirs.hold());
      assertThat(mine.workpiece().volumeMm3())
          .as(as)
          .isCloseTo(theirs.workpiece().volumeMm3(), within(0.001));
      assertThat(mine.removed().volumeMm3())
          .as(as)
          .isCloseTo(theirs.removed().volumeMm3(), within(0.001));
    }
  }

  private Move move(Random random) {
    List<Operation> operations = study.route().operations();
    Operation operation = operations.get(random.nextInt(operations.size()));
    int position = 1 + random.nextInt(study.machine().lastPosition());
    return switch (random.nextInt(4)) {
      case 0 -> to(operation.id(), position);
      case 1 -> new Move(operation.id(), null, position, 3 * random.nextDouble(), null, null);
      case 2 -> new Move(operation.id(), null, position, null, 1 + random.nextInt(4), null);
      default -> new Move(operation.id(), null, null, null, null, 500 + 1500 * random.nextDouble());
    };
  }

  @Test
  void aBlockPutFirstBeginsNoLaterThanOnePutLast() {
    for (Operation operation : study.route().operations()) {
      double first = startS(new Move(operation.id(), null, 2, null, 1, null));
      double last = startS(new Move(operation.id(), null, 2, null, 99, null));
      double atOnce = startS(new Move(operation.id(), null, 2, 0.0, null, null));
      assertThat(first).as(operation.id()).isLessThanOrEqualTo(last).isEqualTo(atOnce);
    }
  }

  private double startS(Move move) {
    LaidOut laid = bench.lay(new Moves(bench).apply(plan.layout(), List.of(move)));
    return laid.timeline().findOperation(move.operationId()).orElseThrow().startS();
  }

  @Test
  void aBrokenOrderSaysWhyAndWhatElseWouldHaveToMove() {
    var order =
        study.route().orders().stream()
            .filter(o -> position(o.beforeId()) > 0 && position(o.afterId()) > 0)
            .filter(o -> position(o.beforeId()) < position(o.afterId()))
            .filter(o -> position(o.afterId()) < study.machine().lastPosition())
            .findFirst()
            .orElseThrow();
    Layout moved =
        new Moves(bench)
            .apply(plan.layout(), List.of(to(order.beforeId(), study.machine().lastPosition())));
    LaidOut laid = bench.lay(moved);
    assertThat(laid.audit().finding("order").isPassed()).isFalse();
    List<Breach> breaches =
        new Breaches(bench, laid, Set.of(order.beforeId())).of(laid.audit().finding("order"));
    assertThat(breaches)
        .anySatisfy(
            breach -> {
              assertThat(breach.reason()).isEqualTo(order.reason());
              assertThat(breach.operationIds()).contains(order.beforeId(), order.afterId());
              assertThat(breach.alsoMove()).contains(order.afterId());
              assertThat(breach.alsoMoveWords())
                  .contains("position " + study.machine().lastPosition() + " or later");
            });
    Layout mended = moved;
    for (String id : breaches.get(0).alsoMove()) {
      mended = new Moves(bench).apply(mended, List.of(to(id, study.machine().lastPosition())));
    }
    long before = laid.audit().finding("order").breaches().size();
    assertThat(bench.lay(mended).audit().finding("order").breaches().size())
        .isLessThan((int) before);
  }

  private int position(String operationId) {
    return plan.timeline().positions().stream()
        .filter(p -> p.operations().stream().anyMatch(o -> o.operationId().equals(operationId)))
        .mapToInt(p -> p.position())
        .findFirst()
        .orElse(0);
  }

  @Test
  void whatIsNotThereIsRefusedByName() {
    Moves moves = new Moves(bench);
    assertThatThrownBy(() -> moves.apply(plan.layout(), List.of(to("nobody", 1))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("nobody");
    String id = study.route().operations().get(0).id();
    assertThatThrownBy(
            () ->
                moves.apply(
                    plan.layout(), List.of(new Move(id, "9-cross", null, null, null, null))))
        .hasMessageContaining("slideId: 9-cross, allowed: 1-");
    assertThatThrownBy(() -> moves.apply(plan.layout(), List.of(to(id, 99))))
        .hasMessageContaining("position: 99");
    assertThatThrownBy(
            () ->
                moves.apply(
                    plan.layout(), List.of(new Move(id, null, null, null, null, Double.NaN))))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
