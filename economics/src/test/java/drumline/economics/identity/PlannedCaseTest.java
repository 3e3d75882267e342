package drumline.economics.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drumline.economics.cost.OptionNeed;
import drumline.economics.sample.SampleInquiry;
import drumline.economics.study.Assumptions;
import drumline.economics.study.MoneyCase;
import drumline.economics.study.MoneyStudy;
import drumline.economics.study.PlannedCase;
import drumline.economics.tool.ToolWear;
import drumline.shop.layout.Layout;
import drumline.shop.layout.Placement;
import drumline.shop.machine.Equipment;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Figures redone by hand from the sample's own inputs. */
class PlannedCaseTest {
  private final MoneyCase given = caseWith(SampleInquiry.layout());

  @Test
  void takesStockFromTheRoute() {
    assertThat(given.stock().facingMm()).isCloseTo(0.3, within(1e-9));
    assertThat(given.stock().kerfMm()).isEqualTo(2.5);
    // (3000 - 120 - 3) / (28 + 0.3 + 2.5) = 93.4
    assertThat(MoneyStudy.of(given).bar().piecesPerLoadCount()).isEqualTo(93);
  }

  @Test
  void countsEachToolAtItsOwnSpeed() {
    ToolWear face = given.tools().get(0);
    // v = pi * 22 * 3000 / 1000 = 207.35 m/min; T = (700 / 207.35)^4 = 129.9 min
    assertThat(face.cutS()).isEqualTo(2);
    assertThat(face.lifeMin()).isCloseTo(129.9, within(0.1));
    assertThat(face.piecesPerEdgeCount()).isEqualTo((long) (face.lifeMin() * 30));
    assertThat(face.pricePerEdge()).isEqualByComparingTo("2");
    // v = pi * 5 * 4000 / 1000 = 62.8 m/min: Taylor promises 15 424 min, nobody counts on it
    ToolWear drill = given.tools().get(1);
    assertThat(drill.limit()).isEqualTo(ToolWear.LifeLimit.LONGEST_COUNTED_ON);
    assertThat(drill.lifeMin()).isEqualTo(480);
  }

  @Test
  void convertsMoneyAndAddsOptions() {
    assertThat(given.machine().price()).isEqualByComparingTo("500000");
    assertThat(given.machine().optionsPrice()).isEqualByComparingTo("10000");
    assertThat(given.rates().machinePerHour()).isEqualByComparingTo("60");
    List<OptionNeed> options =
        OptionNeed.of(SampleInquiry.machine(), SampleInquiry.route(), SampleInquiry.layout());
    assertThat(options)
        .singleElement()
        .satisfies(
            option -> {
              assertThat(option.equipment()).isEqualTo(Equipment.LIVE_TOOL);
              assertThat(option.operationIds()).containsExactly("20");
            });
  }

  @Test
  void refusesPlacesThatAreNotThere() {
    Layout lost = new Layout("six-32", List.of(new Placement("10", "9-cross", 3000, 0)));
    assertThatThrownBy(() -> caseWith(lost))
        .hasMessage("slideId: no slide 9-cross, allowed: a slide of six-32");
  }

  private static MoneyCase caseWith(Layout layout) {
    return PlannedCase.of(
        SampleInquiry.inquiry(),
        SampleInquiry.machine(),
        SampleInquiry.route(),
        layout,
        SampleInquiry.timeline(),
        8000,
        Assumptions.usual());
  }
}
