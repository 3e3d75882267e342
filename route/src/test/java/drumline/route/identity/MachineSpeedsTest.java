package drumline.route.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drumline.route.Asked;
import drumline.route.RouteDerivation;
import drumline.route.machine.MachineRoute;
import drumline.route.rule.Allowances;
import drumline.route.rule.RuleBook;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.machine.Machine;
import drumline.shop.operation.Operation;
import drumline.shop.operation.Route;
import drumline.shop.operation.SpindleCondition;
import org.junit.jupiter.api.Test;

/** What a machine's spindles change, and the tables that rules work with. */
class MachineSpeedsTest {
  private static final Allowances SHIPPED = Allowances.shipped();
  private static final Inquiry INQUIRY =
      Asked.piece(
              """
              length: 20 mm ±0.2
              outside:
              - {id: body, to: 20 mm, diameter: 22 mm h8}
              front-bore:
              - {id: fine, depth: 12 mm, diameter: 1.5 mm, bottom: drill-point}
              """)
          .in("CuZn39Pb3")
          .inquiry();

  private static Machine machine(String name) {
    return INQUIRY.machines().stream().filter(m -> m.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void oneCommonSpeedLetsToolsRunBelowTheirWindow() {
    Route route = RouteDerivation.derive(INQUIRY);
    Route common = MachineRoute.adapt(route, machine("drum-6x42-common"), INQUIRY, SHIPPED);
    Operation before = route.operation("body-rough-turn");
    Operation after = common.operation("body-rough-turn");
    assertThat(after.cut().lowestRevPerMin())
        .isCloseTo(0.4 * before.cut().lowestRevPerMin(), within(1e-6));
    assertThat(after.cut().highestRevPerMin()).isEqualTo(before.cut().highestRevPerMin());
    assertThat(common.operation("piece-cut-off").cut().highestRevPerMin())
        .as("no constant surface speed at a common speed")
        .isEqualTo(route.operation("piece-cut-off").cut().highestRevPerMin());
  }

  @Test
  void aDrillTooSmallForTheSpindleIsSaidAndStaysPossible() {
    Machine machine = machine("drum-6x32");
    double top = machine.drive().highestRevPerMin();
    Route route = RouteDerivation.derive(INQUIRY);
    assertThat(route.operation("fine-drill-a").cut().lowestRevPerMin()).isGreaterThan(top);
    Route adapted = MachineRoute.adapt(route, machine, INQUIRY, SHIPPED);
    assertThat(adapted.problems())
        .anySatisfy(
            p -> {
              assertThat(p.code()).isEqualTo("below-window");
              assertThat(p.where()).isEqualTo("fine-drill-a");
              assertThat(p.toLine()).contains("rev/min of drum-6x32").contains("m/min and more");
            });
    for (Operation operation : adapted.operations()) {
      if (operation.condition() == SpindleCondition.TURNING) {
        assertThat(operation.cut().lowestRevPerMin()).as(operation.id()).isLessThan(top);
      }
    }
  }

  @Test
  void amountsCarryTheirUnit() {
    assertThat(SHIPPED.withAmount("faceStock", "0.5 mm").value("faceStock")).isEqualTo(0.5);
    assertThatThrownBy(() -> SHIPPED.withAmount("faceStock", "0.5 s"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("amount: 0.5 s, allowed for faceStock: 0 or more, in mm");
    assertThatThrownBy(() -> SHIPPED.withAmount("faceStock", "NaN mm"))
        .hasMessageContaining("amount: NaN mm");
    assertThatThrownBy(() -> SHIPPED.withAmount("faceStock", "-1 mm"))
        .hasMessageContaining("amount: -1 mm");
    assertThatThrownBy(() -> SHIPPED.value("face"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("name: face, allowed: ");
  }

  @Test
  void rulesHaveWordsAndASource() {
    assertThat(RuleBook.all()).hasSizeGreaterThan(30);
    assertThat(RuleBook.all())
        .allSatisfy(
            rule -> {
              assertThat(rule.text()).endsWith(".");
              assertThat(rule.source()).isNotBlank();
            });
    assertThatThrownBy(() -> RuleBook.rule("whim"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("id: whim, allowed: ");
  }
}
