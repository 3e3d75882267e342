package drumline.drawing.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.drawing.view.Spread;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Labels move just far enough. */
class SpreadTest {

  @Test
  void twoAtOnePlaceMoveHalfTheRoomEach() {
    assertThat(Spread.apply(new double[] {5, 5}, 4)).containsExactly(3, 7);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void roomIsKeptAndFreeOnesStay(long seed) {
    Random random = new Random(seed);
    double[] wished = random.doubles(12, 0, 60).sorted().toArray();
    double[] places = Spread.apply(wished, 4);
    for (int i = 1; i < places.length; i++) {
      assertThat(places[i] - places[i - 1]).isGreaterThanOrEqualTo(4 - 1e-9);
    }
    assertThat(Arrays.stream(places).sum()).isCloseTo(Arrays.stream(wished).sum(), within(1e-9));
  }

  /** No small shift of one label, or of a run of labels, makes the squared movement less. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void noShiftOfARunIsBetter(long seed) {
    double[] wished = new Random(seed).doubles(9, 0, 30).sorted().toArray();
    double[] places = Spread.apply(wished, 4);
    for (int from = 0; from < places.length; from++) {
      for (int to = from; to < places.length; to++) {
        for (double shift : new double[] {-0.05, 0.05}) {
          double[] moved = places.clone();
          for (int i = from; i <= to; i++) {
            moved[i] += shift;
          }
          if (keepsRoom(moved)) {
            assertThat(cost(moved, wished)).isGreaterThanOrEqualTo(cost(places, wished) - 1e-9);
          }
        }
      }
    }
  }

  private static boolean keepsRoom(double[] places) {
    for (int i = 1; i < places.length; i++) {
      if (places[i] - places[i - 1] < 4 - 1e-9) {
        return false;
      }
    }
    return true;
  }

  private static double cost(double[] places, double[] wished) {
    double sum = 0;
    for (int i = 0; i < places.length; i++) {
      sum += (places[i] - wished[i]) * (places[i] - wished[i]);
    }
    return sum;
  }
}
