package drumline.cutting.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import drumline.cutting.drilling.HoleCut;
import drumline.cutting.drilling.StepDrill;
import drumline.cutting.finish.FeedMarkRoughness;
import drumline.cutting.finish.KnurlTracking;
import drumline.cutting.force.ChipCompression;
import drumline.cutting.force.EdgeWear;
import drumline.cutting.force.KienzleConstants;
import drumline.cutting.force.KienzleCorrections;
import drumline.cutting.force.RakeCorrection;
import drumline.cutting.lettering.Lettering;
import drumline.cutting.lettering.StrokeFont;
import drumline.cutting.parting.GrooveWidening;
import drumline.cutting.tables.ChasingPassTable;
import drumline.cutting.tables.KienzleTable;
import drumline.cutting.tables.KienzleTable.Family;
import drumline.cutting.tables.Provenance;
import drumline.cutting.tables.TappingForceTable;
import drumline.cutting.tables.TaylorTable;
import drumline.cutting.threading.ChaserPasses;
import drumline.cutting.threading.ChasingCut;
import drumline.cutting.threading.InfeedSchedule;
import drumline.cutting.threading.TapPass;
import drumline.cutting.threading.TappingTorque;
import drumline.cutting.threading.ThreadMilling;
import drumline.cutting.threading.ThreadRolling;
import drumline.cutting.threading.ThreadRunIn;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Threads, step drills, corrections, letters and tables: what must hold whatever the numbers. */
class ThreadsAndLettersTest {
  private static final KienzleConstants STEEL = new KienzleConstants(1700, 0.19);
  private static final double EXACT = 1e-9;

  @Test
  void equalAreaPassesCutEqualAreas() {
    ChasingCut sharp = new ChasingCut(60, 0, 10, 0.4);
    double before = 0;
    for (double depth : InfeedSchedule.equalAreaMm(0.92, 6)) {
      double area = sharp.areaMm2(before, depth);
      assertThat(area).isCloseTo(0.92 * 0.92 * Math.tan(Math.PI / 6) / 6, within(EXACT));
      before = depth;
    }
    assertThat(InfeedSchedule.equalDepthMm(0.9, 3)).containsExactly(0.3, 0.6, 0.9);
  }

  @Test
  void differentialTappingIsReversingWithoutTheReversal() {
    TapPass tap = new TapPass(12, 1.25, TapPass.Chamfer.FORM_C);
    assertThat(tap.travelMm()).isCloseTo(12 + 3.5 * 1.25, within(EXACT));
    double reversing = tap.reversingS(600, 600, 2400);
    double differential = tap.differentialS(2000, 1400, 2600, 0);
    assertThat(reversing - differential).isCloseTo(0.5, within(EXACT));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> tap.differentialS(2000, 1400, 1500, 0))
        .withMessageContaining("one below and one above workRevPerMin 2000");
    assertThat(TappingTorque.formedNm(3.6, 2.5)).isCloseTo(9, within(EXACT));
  }

  @Test
  void runInGrowsWithTheSquareOfTheSpeed() {
    double once = ThreadRunIn.accelerationMm(1000, 1.5, 5000);
    assertThat(once).isCloseTo(25 * 25 / 10_000.0, within(EXACT));
    assertThat(ThreadRunIn.accelerationMm(2000, 1.5, 5000)).isCloseTo(4 * once, within(EXACT));
    assertThat(ThreadRunIn.positionLoopMm(1000, 1.5, 50, 0.01))
        .isCloseTo(25.0 / 50 * (Math.log(100) - 1), within(EXACT));
    assertThat(ThreadRunIn.positionLoopMm(1000, 1.5, 50, 0.9)).isZero();
  }

  @Test
  void millingFeedsOfCentreAndContourMeetForAThinCutter() {
    ThreadMilling thread = new ThreadMilling(20, 1e-6, 1, 0.5, 0);
    assertThat(thread.insideCentreMmPerMin(300)).isCloseTo(300, within(1e-3));
    assertThat(thread.outsideCentreMmPerMin(300)).isCloseTo(300, within(1e-3));
    assertThat(thread.timeS(300)).isCloseTo(1.5 / thread.axisRevPerMin(300) * 60, within(EXACT));
  }

  @Test
  void rollsThatDoNotFlowAreReported() {
    assertThat(ThreadRolling.material(12, 600).isInside()).isTrue();
    assertThat(ThreadRolling.material(3, 1500).notes()).hasSize(2);
    assertThat(ThreadRolling.tangentialTravelMm(60, 9, 0.5))
        .isCloseTo(Math.sqrt(34.5 * 34.5 - 34 * 34), within(EXACT));
    assertThat(ChaserPasses.passesCount(7, 3)).isEqualTo(3);
    assertThat(ChaserPasses.furtherRunOutMm(1.5, 3)).isEqualTo(3);
  }

  @Test
  void stepsOfOneAngleAddUpToTheWholeDrill() {
    StepDrill drill =
        new StepDrill(List.of(6.0, 9.0, 12.0), 118, 118, 0.2, HoleCut.Thrust.CHISEL_POINT);
    HoleCut whole = HoleCut.drill(12, 118, 0.2);
    var sum = drill.load(STEEL, KienzleCorrections.NONE, 1500);
    var one = whole.load(STEEL, KienzleCorrections.NONE, 1500);
    assertThat(sum.torqueNm()).isCloseTo(one.torqueNm(), within(EXACT));
    assertThat(sum.axialForceN()).isCloseTo(one.axialForceN(), within(1e-6));
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> new StepDrill(List.of(9.0, 6.0), 118, 90, 0.2, HoleCut.Thrust.CHISEL_POINT))
        .withMessageStartingWith("diametersMm is 6");
  }

  @Test
  void correctionsMultiply() {
    KienzleCorrections all =
        KienzleCorrections.NONE
            .withRakeRatio(RakeCorrection.ratio(-6, RakeCorrection.STEEL_DEG))
            .withSpeedRatio(1.2)
            .withWear(EdgeWear.WORN)
            .withCompression(ChipCompression.MILLING);
    assertThat(all.productRatio()).isCloseTo(1.12 * 1.2 * 1.3 * 1.2, within(EXACT));
  }

  @Test
  void roughnessAndFeedAreInverse() {
    FeedMarkRoughness real = new FeedMarkRoughness(0.8, 1.6);
    assertThat(real.raUm(real.feedMmPerRev(1.6))).isCloseTo(1.6, within(EXACT));
    assertThat(real.rtUm(real.feedForRtMmPerRev(6.3))).isCloseTo(6.3, within(EXACT));
    assertThat(real.validity(0.2, 5).notes()).hasSize(1);
    assertThat(real.validity(0.1, 5).isInside()).isTrue();
    KnurlTracking knurl = new KnurlTracking(47, 19.05, 0.1778);
    assertThat(knurl.teethCount(knurl.trackingDiameterMm(12.7))).isCloseTo(31, within(EXACT));
    assertThat(GrooveWidening.plungesCount(5, 3, 0.2)).isEqualTo(2);
    assertThat(GrooveWidening.plungesCount(3, 3, 0.2)).isEqualTo(1);
  }

  @Test
  void letterWaysAreWhatARulerSays() {
    StrokeFont font = StrokeFont.plain();
    Lettering tee = font.line("T", 6);
    assertThat(tee.wayMm()).isCloseTo(6 + 4, within(EXACT));
    assertThat(tee.strokesCount()).isEqualTo(2);
    Lettering zed = font.line("Z", 3);
    assertThat(zed.wayMm()).isCloseTo((8 + Math.sqrt(52)) / 2, within(EXACT));
    Lettering pair = font.line("TZ", 6);
    assertThat(pair.wayMm()).isCloseTo(tee.wayMm() + 2 * zed.wayMm(), within(EXACT));
    assertThat(pair.widthMm()).isCloseTo(9.5, within(EXACT));
    assertThat(pair.pass(0.4, 1).timeS(600))
        .isCloseTo(1 + pair.wayMm() / 10 + 3 * 0.4, within(EXACT));
  }

  @Test
  void everyCharacterIsInTheFontAndInsideItsCell() {
    StrokeFont font = StrokeFont.plain();
    assertThat(font.characters()).isEqualTo("-./0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ");
    for (char c : font.characters().toCharArray()) {
      Lettering letter = font.line(String.valueOf(c), 6);
      assertThat(letter.widthMm()).as("%s", c).isBetween(0.0, 5.0);
      letter.strokes().stream()
          .flatMap(List::stream)
          .forEach(p -> assertThat(p.yMm()).as("%s", c).isBetween(0.0, 6.0));
    }
    assertThatIllegalArgumentException()
        .isThrownBy(() -> font.line("A a", 3))
        .withMessageStartingWith("text has 'a' at place 3; allowed is the space and -./0123");
  }

  @Test
  void tablesKeepTheirFamiliesApart() {
    var older = KienzleTable.findRow("16MnCr5", Family.KIENZLE).orElseThrow();
    var newer = KienzleTable.findRow("16MnCr5", Family.REMEASURED).orElseThrow();
    assertThat(older.constants()).isEqualTo(new KienzleConstants(2100, 0.26));
    assertThat(newer.constants()).isEqualTo(new KienzleConstants(1411, 0.30));
    assertThat(KienzleTable.findRow("Unobtainium", Family.KIENZLE)).isEmpty();
    assertThat(KienzleTable.rows())
        .allSatisfy(r -> assertThat(r.source()).isNotBlank())
        .allSatisfy(
            r ->
                assertThat(r.provenance() == Provenance.READ || r.provenance() == Provenance.FITTED)
                    .isEqualTo(!r.provenance().isUnverified()));
    assertThat(TappingForceTable.findRow("steel below 700").orElseThrow().specificForceMpa())
        .isEqualTo(2300);
    assertThat(ChasingPassTable.passesCount(1.5)).isEqualTo(6);
    assertThat(ChasingPassTable.passesCount(1.6)).isEqualTo(8);
    assertThat(TaylorTable.rows()).hasSize(7).allMatch(r -> r.provenance().isUnverified());
  }
}
