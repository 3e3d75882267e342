package drumline.economics.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drumline.economics.sample.SampleInquiry;
import drumline.economics.triage.MachineFit;
import drumline.economics.triage.RuleFinding;
import drumline.economics.triage.Triage;
import drumline.economics.triage.TriageRules;
import drumline.economics.triage.Verdict;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.part.Bar;
import drumline.shop.tolerance.Tolerance;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TriageTest {
  private static final Tolerance H8 = new Tolerance("h8", -0.033, 0, OptionalInt.of(8));

  @ParameterizedTest
  @CsvSource({"20000, FITS", "19999, LOOK_CLOSER", "5000, LOOK_CLOSER", "4999, DOES_NOT_FIT"})
  void lotsMustBeLongEnough(long perLot, Verdict verdict) {
    RuleFinding finding = finding(with(round(22), perLot, H8), "lot-size");
    assertThat(finding.verdict()).isEqualTo(verdict);
    assertThat(finding.figure()).isEqualTo(perLot + " pieces per lot");
    assertThat(finding.limit()).isEqualTo("at least 20000 pieces per lot, look closer to 5000");
  }

  /** Grades of 18 to 30 mm in ISO 286-1: IT6 13, IT7 21, IT8 33, IT9 52 µm. */
  @ParameterizedTest
  @CsvSource({
    "0.033, IT 8 (seat), FITS",
    "0.032, IT 7 (seat), LOOK_CLOSER",
    "0.021, IT 7 (seat), LOOK_CLOSER",
    "0.013, IT 6 (seat), DOES_NOT_FIT",
    "0.400, IT 13 (seat), FITS"
  })
  void plainDeviationsGetAGrade(double widthMm, String figure, Verdict verdict) {
    Tolerance plain = new Tolerance("plain", 0, widthMm, OptionalInt.empty());
    RuleFinding finding = finding(with(round(22), 50_000, plain), "tolerance");
    assertThat(finding.figure()).isEqualTo(figure);
    assertThat(finding.verdict()).isEqualTo(verdict);
  }

  @Test
  void hexagonIsMeasuredAcrossItsCorners() {
    Bar hexagon28 = new Bar(Bar.Shape.HEXAGON, 28, 0, "h11", 3000);
    MachineFit fit = Triage.of(with(hexagon28, 50_000, H8), null).machines().get(0);
    assertThat(fit.verdict()).isEqualTo(Verdict.DOES_NOT_FIT);
    assertThat(fit.findings())
        .filteredOn(f -> f.verdict() == Verdict.DOES_NOT_FIT)
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.figure()).isEqualTo("32.33 mm across corners");
              assertThat(f.limit()).isEqualTo("at most 32 mm across corners");
            });
  }

  @Test
  void drivenToolsThatCanBeHadWantACloserLook() {
    Triage triage = Triage.of(SampleInquiry.inquiry(), SampleInquiry.route());
    MachineFit fit = triage.machines().get(0);
    assertThat(fit.findings())
        .filteredOn(f -> f.ruleId().equals("live-tools"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.verdict()).isEqualTo(Verdict.LOOK_CLOSER);
              assertThat(f.limit()).isEqualTo("at most 0 driven tools, look closer to 9");
            });
    assertThat(triage.verdict()).isEqualTo(Verdict.LOOK_CLOSER);
  }

  @Test
  void theWholeIsNoBetterThanItsWorstFinding() {
    Triage triage = Triage.of(with(round(22), 4000, H8), null);
    assertThat(triage.verdict()).isEqualTo(Verdict.DOES_NOT_FIT);
  }

  @Test
  void everyShippedRuleNamesItsSource() {
    assertThat(TriageRules.shipped())
        .hasSize(15)
        .allSatisfy(
            rule -> {
              assertThat(rule.source()).isNotBlank();
              assertThat(rule.text()).endsWith(".");
              assertThat(rule.unit()).contains("#");
            });
  }

  @Test
  void aBrokenTableNamesItsLine() {
    String head = "id;scope;measure;sense;fits;look;unit;text;source\n";
    assertThatThrownBy(() -> TriageRules.parse(head + "a;piece\n"))
        .hasMessageStartingWith("line 2: 2 cells, allowed: 9");
    assertThatThrownBy(() -> TriageRules.parse(head + "a;piece;TOOLS;at-most;many;1;#;Text.;me\n"))
        .hasMessage("line 2, fits: many, allowed: a number or machine");
    assertThatThrownBy(() -> TriageRules.parse(head + "a;piece;TOOLS;below;1;1;#;Text.;me\n"))
        .hasMessage("line 2, sense: below, allowed: [AT_LEAST, AT_MOST]");
  }

  private static Inquiry with(Bar bar, long perLot, Tolerance tolerance) {
    return SampleInquiry.inquiry(bar, perLot, tolerance);
  }

  private static Bar round(double diameterMm) {
    return new Bar(Bar.Shape.ROUND, diameterMm, 0, "h9", 3000);
  }

  private static RuleFinding finding(Inquiry inquiry, String ruleId) {
    return Triage.of(inquiry, null).findings().stream()
        .filter(finding -> finding.ruleId().equals(ruleId))
        .findFirst()
        .orElseThrow();
  }
}
