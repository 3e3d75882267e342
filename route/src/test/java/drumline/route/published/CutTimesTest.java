package drumline.route.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.route.Asked;
import drumline.route.RouteDerivation;
import drumline.route.machine.MachineRoute;
import drumline.route.rule.Allowances;
import drumline.route.rule.Practice;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.machine.Machine;
import drumline.shop.machine.SpindleDrive;
import drumline.shop.operation.CutSpec;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.Route;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Times and feeds of derived operations against numbers from outside. */
class CutTimesTest {
  private static final Allowances SHIPPED = Allowances.shipped();

  private static Operation only(Route route, OperationKind kind) {
    return route.operations().stream().filter(o -> o.kind() == kind).findFirst().orElseThrow();
  }

  /** Source: [BASIS] 2.8 B2: depth 2.8, 0.05 a stroke, 20 + 4 mm, 8/20 m/min, 0.1 s: 20.4 s. */
  @Test
  void aKeywayTakesTheStrokesOfTheWorkedExample() {
    Route route =
        Asked.piece(
                """
                length: 30 mm ±0.2
                outside:
                - {id: body, to: 30 mm, diameter: 30 mm}
                front-bore:
                - {id: bore, depth: 30 mm, diameter: 16 mm, bottom: through}
                features:
                - {id: key, kind: inside-form, end: front, form: keyway, width: 5 mm, radial-depth: 2.8 mm, length: 20 mm}
                """)
            .from("{shape: round, size: 32 mm, tolerance: h9, length: 3 m}")
            .route();
    double strokesS = only(route, OperationKind.SLOT).cut().cutS(1) - SHIPPED.value("holdClamp");
    assertThat(strokesS).as("without turning to the angle").isCloseTo(20.4, within(0.05));
  }

  /**
   * Source: [BASIS] section 3 F1, derived and checked there by integration: R 16 to 0, 150 m/min,
   * 0.08 mm/rev, clamp 4000 rev/min: 4.581 s.
   */
  @Test
  void partingKeepsItsSurfaceSpeedWhereEachSpindleHasItsOwnDrive() {
    Allowances bare =
        SHIPPED
            .withAmount("cutStart", "0 mm")
            .withAmount("cutOffOverrun", "0 mm")
            .withAmount("cutOffReduce", "0 mm")
            .withAmount("drumLife", "1 min");
    Inquiry inquiry =
        Asked.piece("length: 20 mm ±0.2\noutside:\n- {id: body, to: 20 mm, diameter: 30 mm}\n")
            .from("{shape: round, size: 32 mm, tolerance: h9, length: 3 m}")
            .inquiry();
    Operation cutOff =
        only(
            RouteDerivation.derive(inquiry, Practice.shipped().withAllowances(bare)),
            OperationKind.CUT_OFF);
    CutSpec cut = cutOff.cut();
    double highest = 1000 * 150 / (Math.PI * 32);
    CutSpec asked =
        new CutSpec(
            16 / 0.08, 0, 0, highest / 2, highest, "", 0, 32, 0.08, 16, 1, 16, 40, cut.life());
    Route route =
        new Route(
            List.of(cutOff.withCut(cutOff.id(), cutOff.title(), asked)),
            List.of(),
            List.of(),
            List.of());
    CutSpec adapted =
        MachineRoute.adapt(route, clampedAt4000(inquiry), inquiry, bare).operations().get(0).cut();
    assertThat(adapted.cutS(adapted.highestRevPerMin())).isCloseTo(4.581, within(0.0005));
    assertThat(adapted.cuttingSpeedMPerMin(adapted.highestRevPerMin()))
        .as("tool life counts the surface speed")
        .isCloseTo(150, within(0.01));
  }

  private static Machine clampedAt4000(Inquiry inquiry) {
    Machine m =
        inquiry.machines().stream()
            .filter(x -> x.name().equals("drum-6x32"))
            .findFirst()
            .orElseThrow();
    SpindleDrive d = m.drive();
    SpindleDrive drive =
        new SpindleDrive(
            d.coupling(),
            100,
            4000,
            d.powerKw(),
            d.torqueNm(),
            d.runUpRevPerMinPerS(),
            d.orientS(),
            d.cAxisRevPerMin());
    return new Machine(
        m.name(),
        m.title(),
        m.kind(),
        m.positions(),
        drive,
        m.workholding(),
        null,
        m.barFeed(),
        m.indexS(),
        m.maxPieceLengthMm(),
        m.cost(),
        m.source());
  }

  /**
   * By hand, [BASIS] 2.2: 5 mm carbide drill of 140°, point 0.182·5 = 0.91 mm, start 0.5 mm, 8 mm
   * deep, 0.03·5 = 0.15 mm/rev, 140 m/min on 5 mm = 8913 rev/min: 9.41/0.15/8913 min = 0.422 s.
   */
  @Test
  void aDrillTakesItsDepthPointAndStart() {
    Route route =
        Asked.piece(
                """
                length: 20 mm ±0.2
                outside:
                - {id: body, to: 20 mm, diameter: 25 mm}
                front-bore:
                - {id: bore, depth: 8 mm, diameter: 5 mm, bottom: drill-point}
                """)
            .route();
    CutSpec drill = only(route, OperationKind.DRILL).cut();
    assertThat(drill.cutS(8913)).isCloseTo(0.422, within(0.001));
    assertThat(drill.highestRevPerMin()).isCloseTo(8913, within(1.0));
  }

  /**
   * [BASIS] section 5: f = √(32·r·Ra), r 0.4 mm, Ra 0.8 µm on the print, real surfaces 1.5 times
   * the ideal: √(32·0.4·0.0008/1.5) = 0.0826 mm/rev.
   */
  @Test
  void theFinishingFeedLeavesTheRoughnessAsked() {
    Route route =
        Asked.piece(
                """
                length: 20 mm ±0.2
                outside:
                - {id: pin, to: 20 mm, diameter: 20 mm h8, roughness: Ra 0.8}
                """)
            .route();
    assertThat(only(route, OperationKind.FINISH_TURN).cut().feedMmPerRev())
        .isCloseTo(0.0826, within(0.0001));
  }

  /** Common practice and [BASIS] 2.9: blades of 2 to 3 mm for bar of 20 to 40 mm. */
  @Test
  void partingBladesAreAsNarrowAsUsual() {
    for (int size : List.of(20, 26, 32, 36)) {
      Route route =
          Asked.piece(
                  "length: 20 mm ±0.2\noutside:\n- {id: b, to: 20 mm, diameter: "
                      + (size - 1)
                      + " mm}\n")
              .from("{shape: round, size: " + size + " mm, tolerance: h9, length: 3 m}")
              .wishing("{machines: [drum-8x42]}")
              .route();
      assertThat(only(route, OperationKind.CUT_OFF).tool().sizeMm()).isBetween(2.0, 3.0);
    }
  }
}
