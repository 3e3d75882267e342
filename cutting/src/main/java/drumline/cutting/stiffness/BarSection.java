package drumline.cutting.stiffness;

import drumline.cutting.validity.Require;

/**
 * Cross section of bar, tube or boring bar.
 *
 * <p>Round: A = π·D²/4, I = π·D⁴/64; tube with d: differences; hexagon across flats s: A =
 * (√3/2)·s², I = (5√3/144)·s⁴, corners 2·s/√3; square s: A = s², I = s⁴/12, corners √2·s.
 *
 * <p>Source: strength of materials, section properties; hexagon and square bars have sharp corners
 * here, drawn bars a little less.
 */
public sealed interface BarSection {
  /** Area A. */
  double areaMm2();

  /** Second moment of area I about an axis through the centre. */
  double inertiaMm4();

  /** Largest width: what must pass the spindle bore. */
  double acrossCornersMm();

  /** A round bar. */
  record Round(double diameterMm) implements BarSection {
    /**
     * @throws IllegalArgumentException if the diameter is not above 0
     */
    public Round {
      Require.positive("diameterMm", diameterMm);
    }

    @Override
    public double areaMm2() {
      return Math.PI / 4 * diameterMm * diameterMm;
    }

    @Override
    public double inertiaMm4() {
      return Math.PI / 64 * Math.pow(diameterMm, 4);
    }

    @Override
    public double acrossCornersMm() {
      return diameterMm;
    }
  }

  /** A tube. */
  record Tube(double diameterMm, double boreMm) implements BarSection {
    /**
     * @throws IllegalArgumentException if a diameter is not above 0 or the bore is not smaller
     */
    public Tube {
      Require.positive("diameterMm", diameterMm);
      Require.inside("boreMm", boreMm, 0, diameterMm);
    }

    @Override
    public double areaMm2() {
      return Math.PI / 4 * (diameterMm * diameterMm - boreMm * boreMm);
    }

    @Override
    public double inertiaMm4() {
      return Math.PI / 64 * (Math.pow(diameterMm, 4) - Math.pow(boreMm, 4));
    }

    @Override
    public double acrossCornersMm() {
      return diameterMm;
    }
  }

  /** A hexagon bar, by its width across flats. */
  record Hexagon(double acrossFlatsMm) implements BarSection {
    /**
     * @throws IllegalArgumentException if the width is not above 0
     */
    public Hexagon {
      Require.positive("acrossFlatsMm", acrossFlatsMm);
    }

    @Override
    public double areaMm2() {
      return Math.sqrt(3) / 2 * acrossFlatsMm * acrossFlatsMm;
    }

    @Override
    public double inertiaMm4() {
      return 5 * Math.sqrt(3) / 144 * Math.pow(acrossFlatsMm, 4);
    }

    @Override
    public double acrossCornersMm() {
      return 2 * acrossFlatsMm / Math.sqrt(3);
    }
  }

  /** A square bar, by its width across flats. */
  record Square(double acrossFlatsMm) implements BarSection {
    /**
     * @throws IllegalArgumentException if the width is not above 0
     */
    public Square {
      Require.positive("acrossFlatsMm", acrossFlatsMm);
    }

    @Override
    public double areaMm2() {
      return acrossFlatsMm * acrossFlatsMm;
    }

    @Override
    public double inertiaMm4() {
      return Math.pow(acrossFlatsMm, 4) / 12;
    }

    @Override
    public double acrossCornersMm() {
      return Math.sqrt(2) * acrossFlatsMm;
    }
  }
}
