package drumline.cutting.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drumline.cutting.finish.BrushDeburring;
import drumline.cutting.livetool.SaddleEdge;
import drumline.cutting.threading.RollingForce;
import drumline.cutting.validity.Validity;
import org.junit.jupiter.api.Test;

/** Rolling force, brushing and the deburring path: hand figures, growth and limits. */
class RollingAndBrushTest {

  /** By hand: s = 0.5/40 = 0.0125; c = √(0.0125·40·9/49) = 0.30305; F = 3·500·15·c = 6818.6 N. */
  @Test
  void rollingForceIsThatOfTheHandFigure() {
    RollingForce force = new RollingForce(40, 9, 0.5, 20, 2, 15);
    assertThat(force.perPassMm()).isCloseTo(0.0125, within(1e-12));
    assertThat(force.contactMm()).isCloseTo(0.30305, within(0.000005));
    assertThat(force.forceN(500, 3)).isCloseTo(6818.6, within(0.1));
  }

  /** Four times the revolutions halve the force: the contact goes with the root of the depth. */
  @Test
  void slowerRollingPressesLess() {
    double quick = new RollingForce(40, 9, 0.5, 10, 2, 15).forceN(500, 3);
    double slow = new RollingForce(40, 9, 0.5, 40, 2, 15).forceN(500, 3);
    assertThat(quick).isCloseTo(2 * slow, within(1e-9 * quick));
  }

  /** The slow twin: where two circles, sunk into each other by s, touch; exact to s/r. */
  @Test
  void contactIsThatOfTwoSunkenCircles() {
    RollingForce force = new RollingForce(40, 9, 0.5, 20, 2, 15);
    double roll = 20;
    double blank = 4.5;
    double apart = roll + blank - force.perPassMm();
    double along = (apart * apart + roll * roll - blank * blank) / (2 * apart);
    double halfWidth = Math.sqrt(roll * roll - along * along);
    assertThat(force.contactMm()).isCloseTo(halfWidth, within(2e-3 * halfWidth));
  }

  @Test
  void rollingRefusesMoreDepthThanTheBlankHas() {
    assertThatThrownBy(() -> new RollingForce(40, 9, 4.6, 20, 2, 15))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("depthMm")
        .hasMessageContaining("4.5");
  }

  /** 15 revolutions at 400 rev/min take 2.25 s; 100 mm at 3000 rev/min run at 942 m/min. */
  @Test
  void brushHasItsTimeAndWarnsOfItsSpeed() {
    BrushDeburring brush = new BrushDeburring(100, 15, 0.5);
    assertThat(brush.timeS(400)).isCloseTo(2.75, within(1e-12));
    assertThat(brush.tipMPerMin(3000)).isCloseTo(942.478, within(0.0005));
    assertThat(brush.validity(3000).isInside()).isTrue();
    assertThat(brush.validity(8000).isInside()).isFalse();
    assertThat(brush.validity(1000).notes().get(0).toLine()).contains("leaves burrs");
  }

  @Test
  void deburringPassTakesTheEdgesWay() {
    SaddleEdge edge = new SaddleEdge(20, 6);
    assertThat(edge.pass(0.2, 0.4).timeS(600)).isCloseTo(edge.lengthMm() / 10 + 0.6, within(1e-9));
  }

  /** A range without an upper end is said as such, and a number without unit leaves no blank. */
  @Test
  void noteOfAnOpenRangeSaysBelow() {
    Validity note = Validity.of("safety", 0.5, 2, Double.POSITIVE_INFINITY, "", "grip harder");
    assertThat(note.notes().get(0).toLine()).isEqualTo("safety 0.5000 is below 2.000: grip harder");
  }
}
