package drumline.cutting.finish;

import drumline.cutting.validity.Require;

/**
 * Knurling: plunged in by work revolutions, or fed along the axis.
 *
 * <p>Plunge: t = 60·Nw/n. Along: t = 60·(l + lo)/(f·n) + 60·Nw/n, Nw the revolutions to press in.
 *
 * <p>Source: [BASIS] 2.6; Nw 5–20, axial feed 0.1–0.3 mm/rev, 15–50 m/min from memory.
 *
 * @param pressInCount work revolutions Nw to press in, above 0
 * @param axialTravelMm travel along the axis l + lo, 0 for a plunged knurl
 * @param feedMmPerRev axial feed f, above 0 (unused for a plunged knurl)
 */
public record KnurlPass(double pressInCount, double axialTravelMm, double feedMmPerRev) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public KnurlPass {
    Require.positive("pressInCount", pressInCount);
    Require.notNegative("axialTravelMm", axialTravelMm);
    Require.positive("feedMmPerRev", feedMmPerRev);
  }

  /** Revolutions that the pass takes, whatever the speed. */
  public double revolutionsCount() {
    return pressInCount + axialTravelMm / feedMmPerRev;
  }

  /**
   * Time of the pass.
   *
   * @param speedRevPerMin spindle speed n, above 0
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public double timeS(double speedRevPerMin) {
    Require.positive("speedRevPerMin", speedRevPerMin);
    return 60 * revolutionsCount() / speedRevPerMin;
  }
}
