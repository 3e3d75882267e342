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
import drumline.shop.machine.Workholding;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.Route;
import drumline.shop.operation.SpindleCondition;
import org.junit.jupiter.api.Test;

/** What a machine's spindles change, and the tables that rules work with. */
class MachineSpeedsTest {
  private static final Allowances SHIPPED = Allowances.shipped();
  private static final Inquiry INQUIRY = piece("CuZn39Pb3");

  private static Inquiry piece(String material) {
    return Asked.piece(
            """
            length: 20 mm ±0.2
            outside:
            - {id: body, to: 20 mm, diameter: 22 mm h8}
            front-bore:
            - {id: fine, depth: 12 mm, diameter: 1.5 mm, bottom: drill-point}
            """)
        .in(material)
        .inquiry();
  }

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

  /** By hand: v = C / T^n, n = 1000·v / (π·d), never below the window, never above what it was. */
  @Test
  void edgesLastAsLongAsADrumAsks() {
    Inquiry inquiry = piece("X8CrNiS18-9");
    Route route = RouteDerivation.derive(inquiry);
    Route adapted = MachineRoute.adapt(route, machine("drum-6x32"), inquiry, SHIPPED);
    double lifeMin = SHIPPED.value("drumLife");
    int slowed = 0;
    for (Operation before : route.operations()) {
      if (before.condition() != SpindleCondition.TURNING
          || before.kind() == OperationKind.CUT_OFF
          || before.kind() == OperationKind.DRILL) {
        continue;
      }
      double v =
          before.cut().life().constantMPerMin()
              * Math.exp(-before.cut().life().exponentRatio() * Math.log(lifeMin));
      double n = v * 318.3099 / before.cut().cuttingDiameterMm();
      double expected =
          Math.min(before.cut().highestRevPerMin(), Math.max(n, before.cut().lowestRevPerMin()));
      double now = adapted.operation(before.id()).cut().highestRevPerMin();
      assertThat(now).as(before.id()).isCloseTo(expected, within(expected * 1e-4));
      slowed += now < before.cut().highestRevPerMin() - 1e-6 ? 1 : 0;
    }
    assertThat(slowed).isPositive();
    Machine lathe =
        INQUIRY.machines().stream()
            .filter(m -> m.kind() == Machine.Kind.TWIN_SPINDLE)
            .findFirst()
            .orElseThrow();
    Route alone = MachineRoute.adapt(route, lathe, inquiry, SHIPPED);
    assertThat(alone.operation("body-rough-turn").cut().highestRevPerMin())
        .as("where one tool cuts, its speed is its own affair")
        .isEqualTo(route.operation("body-rough-turn").cut().highestRevPerMin());
  }

  @Test
  void aDrillThatWouldPushTheBarIsFedLess() {
    Inquiry inquiry =
        Asked.piece(
                """
                length: 40 mm ±0.2
                outside:
                - {id: body, to: 40 mm, diameter: 24 mm h11}
                front-bore:
                - {id: deep, depth: 20 mm, diameter: 14 mm, bottom: drill-point}
                """)
            .in("X8CrNiS18-9")
            .inquiry();
    Machine strong = machine("drum-6x32");
    Machine weak =
        new Machine(
            strong.name(),
            strong.title(),
            strong.kind(),
            strong.positions(),
            strong.drive(),
            new Workholding(strong.workholding().gripN() / 4, 0.15, 0.22, 22, 2),
            strong.pickUp(),
            strong.barFeed(),
            strong.indexS(),
            strong.maxPieceLengthMm(),
            strong.cost(),
            strong.source());
    Route route = RouteDerivation.derive(inquiry);
    Route held = MachineRoute.adapt(route, strong, inquiry, SHIPPED);
    Route fed = MachineRoute.adapt(route, weak, inquiry, SHIPPED);
    Operation drill =
        route.operations().stream()
            .filter(o -> o.kind() == OperationKind.DRILL)
            .findFirst()
            .orElseThrow();
    double before = held.operation(drill.id()).cut().feedMmPerRev();
    Operation after = fed.operation(drill.id());
    assertThat(after.cut().feedMmPerRev()).isLessThan(before);
    assertThat(fed.problems()).anyMatch(p -> p.code().equals("feed-for-grip"));
    double growth = 1 - inquiry.material().force().exponentRatio();
    double feedRatio = after.cut().feedMmPerRev() / drill.cut().feedMmPerRev();
    assertThat(after.loads().thrustN())
        .isCloseTo(drill.loads().thrustN() * Math.pow(feedRatio, growth), within(1e-6));
    assertThat(after.cut().revolutionsCount() * after.cut().feedMmPerRev())
        .as("the same way")
        .isCloseTo(drill.cut().revolutionsCount() * drill.cut().feedMmPerRev(), within(1e-6));
    double tangentialN = 2000 * after.loads().torqueNm() / inquiry.bar().sizeMm();
    double borneN = 0.9 * 0.15 * strong.workholding().gripN() / 4;
    assertThat(borneN / Math.hypot(tangentialN, after.loads().thrustN()))
        .as("exactly the safety asked for, without speed")
        .isCloseTo(2, within(1e-6));
  }
}
