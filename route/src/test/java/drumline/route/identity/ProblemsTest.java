package drumline.route.identity;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.route.Asked;
import drumline.shop.operation.OrderRule;
import drumline.shop.operation.Route;
import drumline.shop.problem.Problem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a route says when it cannot do, or only just can do, what is asked. */
class ProblemsTest {
  private static final String BODY =
      "length: 30 mm ±0.2\noutside:\n- {id: body, to: 30 mm, diameter: 24 mm}\n";

  private static String line(Route route, String code) {
    List<Problem> found = route.problems().stream().filter(p -> p.code().equals(code)).toList();
    assertThat(found).as(code + " among " + route.problems()).hasSize(1);
    Problem problem = found.get(0);
    assertThat(problem.where()).isNotBlank();
    assertThat(problem.hint()).startsWith("Maybe ");
    return problem.toLine();
  }

  @Test
  void aMissingToolNamesSizeAndFeature() {
    Route route =
        Asked.piece(
                BODY
                    + "features:\n- {id: port, kind: cross-holes, at: 15 mm, angle: 0 deg,"
                    + " diameter: 18 mm, depth: 10 mm}\n")
            .route();
    assertThat(line(route, "no-tool"))
        .startsWith("error: port: no driven drill of 18.00 mm; allowed: a tool family that covers");
  }

  @Test
  void aToolTooLongForItsSizeIsSaid() {
    Route route =
        Asked.piece(
                BODY
                    + "front-bore:\n- {id: oil, depth: 28 mm, diameter: 2 mm,"
                    + " bottom: drill-point}\n")
            .route();
    assertThat(line(route, "tool-reach"))
        .contains("oil: 28.0 mm deep, 14.0 times its size; allowed: 8.0 times for carbide drill");
  }

  @Test
  void aBoringBarTooLongIsSaid() {
    Route route =
        Asked.piece(
                BODY
                    + "front-bore:\n- {id: fit, depth: 30 mm, diameter: 7 mm H7, roughness: Ra 0.8,"
                    + " bottom: through}\n"
                    + "relations:\n- {kind: runout, of: fit, to: body, value: 0.02 mm}\n")
            .route();
    assertThat(line(route, "tool-reach")).contains("fit: 30.0 mm deep").contains("boring bar");
  }

  @Test
  void aDrivenToolBeyondItsDriveNamesItsFeature() {
    Route route =
        Asked.piece(
                BODY
                    + "features:\n- {id: port, kind: cross-holes, at: 15 mm, angle: 0 deg,"
                    + " diameter: 2 mm, depth: 5 mm}\n")
            .route();
    assertThat(line(route, "driven-tool-speed"))
        .startsWith("warning: port: driven carbide drill 2 mm: ")
        .contains("driven tools turn at 6000 rev/min at most");
  }

  @Test
  void aDrivenToolThatAsksForMoreThanItsDriveGivesNamesItsFeature() {
    Route route =
        Asked.piece(
                """
                length: 40 mm ±0.2
                outside:
                - {id: body, to: 40 mm, diameter: 41 mm}
                features:
                - {id: flats, kind: flats, from: 0 mm, to: 19 mm, across: 24 mm, count: 4, method: polygon}
                """)
            .from("{shape: round, size: 42 mm, tolerance: h9, length: 3 m}")
            .wishing("{machines: [drum-8x42]}")
            .in("42CrMo4")
            .route();
    assertThat(line(route, "driven-tool-power"))
        .startsWith("warning: flats: ")
        .contains("kW for polygon cutter 90 mm; allowed: 3.0 kW of a driven tool");
  }

  @Test
  void aSurfaceFinerThanTheLeastFeedIsSaid() {
    Route route =
        Asked.piece(
                """
                length: 30 mm ±0.2
                outside:
                - {id: body, to: 30 mm, from-diameter: 24 mm, to-diameter: 23 mm,
                   roughness: Ra 0.2}
                """)
            .route();
    assertThat(line(route, "finish-roughness"))
        .startsWith("warning: body: Ra 0.20 µm asks for 0.041 mm/rev; allowed: 0.050 mm/rev");
  }

  @Test
  void aGradeThatNoOperationReachesIsSaidWithWhatIsReachable() {
    Route route =
        Asked.piece(
                """
                length: 30 mm ±0.2
                outside:
                - {id: body, to: 30 mm, diameter: 24 mm h5}
                """)
            .route();
    assertThat(line(route, "beyond-reach"))
        .startsWith("warning: body: IT 5 and Ra 3.2 asked, which no operation of the drum reaches;")
        .contains("finish turn reaches IT 8 and Ra 1.6, with care IT 7 and Ra 0.4")
        .contains("grinding or honing");
  }

  @Test
  void whatIsReachedOnlyWithCareSaysSoInItsReason() {
    Route route =
        Asked.piece(
                """
                length: 30 mm ±0.2
                outside:
                - {id: body, to: 30 mm, diameter: 24 mm h7}
                """)
            .route();
    assertThat(route.problems()).isEmpty();
    assertThat(route.operation("body-finish-turn").reason())
        .endsWith(
            "Asked here: IT 7 and Ra 3.2; rough turn reaches IT 10 and Ra 3.2, with care IT 9 and"
                + " Ra 2; finish turn reaches IT 8 and Ra 1.6, with care IT 7 and Ra 0.4.");
  }

  @Test
  void signsThatTheLettersLackAreNamed() {
    Route route =
        Asked.piece(
                BODY
                    + "features:\n- {id: mark, kind: engraving, text: A+B, place: outside,"
                    + " at: 15 mm, height: 2 mm, depth: 0.1 mm}\n")
            .route();
    assertThat(line(route, "text-not-in-font")).startsWith("error: mark: “A+B”; allowed: one or");
  }

  @Test
  void aSteeplyLeaningHoleIsSaid() {
    Route route =
        Asked.piece(
                BODY
                    + "features:\n- {id: port, kind: cross-holes, at: 15 mm, angle: 0 deg,"
                    + " lean: 30 deg, diameter: 4 mm, depth: 5 mm}\n")
            .route();
    assertThat(line(route, "leaning-hole"))
        .contains("port: a lean of 30°; allowed: 10° for a drill alone");
  }

  @Test
  void nothingClampsOnAFinishedThread() {
    Route route =
        Asked.piece(
                """
                length: 30 mm ±0.2
                outside:
                - {id: stem, to: 22 mm, diameter: 16 mm, edge: 1 mm x 45°}
                - {id: head, to: 26 mm, diameter: 24 mm}
                - {id: tail, to: 30 mm, diameter: 20 mm}
                back-bore:
                - {id: centre, depth: 6 mm, diameter: 5 mm, bottom: drill-point}
                features:
                - {id: m16, kind: thread, step: stem, size: M16-6g, length: 18 mm}
                """)
            .route();
    assertThat(line(route, "grip-on-thread"))
        .startsWith("warning: m16: the pick-up spindle would grip on stem, which carries m16;");
  }

  @Test
  void aPlainHeadIsGrippedInsteadOfTheThreadedStem() {
    Route route = threadedStem("18 mm").route();
    assertThat(route.problems())
        .extracting(Problem::code)
        .doesNotContain("grip-on-thread")
        .contains("thread-relief");
  }

  /** Source: [DIN-76-1] 2004, pitch 2: groove of form A down to d - 3; run-out 2.5 P. */
  @Test
  void aThreadUpToAShoulderAsksForARelief() {
    assertThat(line(threadedStem("18 mm").route(), "thread-relief"))
        .startsWith("warning: m16: M16 has 4.00 mm to the shoulder; allowed: a groove of DIN 76")
        .contains("Ø13.00", "5.00 mm of run-out");
    assertThat(threadedStem("16 mm").route().problems()).isEmpty();
  }

  private static Asked threadedStem(String length) {
    return Asked.piece(
        """
        length: 30 mm ±0.2
        outside:
        - {id: stem, to: 22 mm, diameter: 16 mm, edge: 1 mm x 45°}
        - {id: head, to: 30 mm, diameter: 24 mm}
        back-bore:
        - {id: centre, depth: 6 mm, diameter: 5 mm, bottom: drill-point}
        features:
        """
            + "- {id: m16, kind: thread, step: stem, size: M16-6g, length: "
            + length
            + "}\n");
  }

  @Test
  void aCrossHoleIntoAThreadAsksForDeburring() {
    String piece =
        """
        length: 30 mm ±0.2
        outside:
        - {id: body, to: 30 mm, diameter: 24 mm}
        front-bore:
        - {id: nut, depth: 20 mm, diameter: 6.8 mm, bottom: drill-point}
        features:
        - {id: m8, kind: thread, step: nut, size: M8-6H, length: 15 mm}
        - {id: port, kind: cross-holes, at: 8 mm, angle: 0 deg, diameter: 3 mm, depth: 12 mm}
        """;
    assertThat(line(Asked.piece(piece).route(), "burr-inside"))
        .contains("port: the hole breaks into m8 and leaves a burr in it");
    String clean = piece + "- {id: clean, kind: deburring, of: port, method: chamfer}\n";
    assertThat(Asked.piece(clean).route().problems())
        .extracting(Problem::code)
        .doesNotContain("burr-inside");
  }

  @Test
  void aCloseRelationAcrossTheEndsIsSaid() {
    Route route =
        Asked.piece(
                """
                length: 30 mm ±0.2
                outside:
                - {id: body, to: 30 mm, diameter: 24 mm h8}
                back-bore:
                - {id: fit, depth: 6 mm, diameter: 10 mm H7, bottom: flat}
                relations:
                - {kind: runout, of: fit, to: body, value: 0.02 mm}
                """)
            .route();
    assertThat(line(route, "relation-across-ends")).contains("fit to body").contains("0.02 mm");
  }

  @Test
  void ordersOfTheUserAreTakenOrExplained() {
    Route taken =
        Asked.piece(BODY)
            .wishing("{orders: [{before: front-face-face, after: body-rough-turn, reason: mine}]}")
            .route();
    assertThat(taken.orders())
        .contains(new OrderRule("front-face-face", "body-rough-turn", "mine", "user-order"));
    Route unknown =
        Asked.piece(BODY)
            .wishing("{orders: [{before: body-turn, after: body-rough-turn, reason: mine}]}")
            .route();
    assertThat(line(unknown, "unknown-operation"))
        .startsWith(
            "error: wishes.orders: body-turn; allowed: the id of an operation of the route.")
        .endsWith("Maybe one of these: body-rough-turn.");
    Route circle =
        Asked.piece(BODY)
            .wishing("{orders: [{before: piece-cut-off, after: body-rough-turn, reason: mine}]}")
            .route();
    assertThat(line(circle, "order-circle")).contains("piece-cut-off before body-rough-turn");
  }

  @Test
  void whatIsLeftOutIsGoneAndAStrangeNameIsSaid() {
    Route route = Asked.piece(BODY).wishing("{leave-out: [front-face-face, nothing]}").route();
    assertThat(Asked.line(route)).isEqualTo("rough turn, cut off");
    assertThat(line(route, "unknown-operation")).startsWith("error: wishes.leave-out: nothing;");
  }
}
