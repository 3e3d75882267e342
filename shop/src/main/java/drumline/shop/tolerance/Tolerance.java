package drumline.shop.tolerance;

import java.util.OptionalInt;

public record Tolerance(
    String text, double lowerDeviationMm, double upperDeviationMm, OptionalInt itGrade) {
  public double widthMm() {
    return upperDeviationMm - lowerDeviationMm;
  }
}
