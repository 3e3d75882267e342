package drumline.cutting.drilling;

import drumline.cutting.validity.Require;

/**
 * Speed between turning work and a turning end tool.
 *
 * <p>Opposite senses add: n = nw + nt; the same sense subtracts: n = |nw − nt|. The feed per
 * revolution counts on n.
 *
 * <p>Source: kinematics.
 */
public final class RelativeSpeed {
  /** Sense of the tool's turning, seen from one fixed side. */
  public enum Sense {
    /** Tool and work turn the same way. */
    SAME,
    /** Tool and work turn against each other. */
    OPPOSITE
  }

  private RelativeSpeed() {}

  /**
   * Speed between work and tool.
   *
   * @param workRevPerMin speed nw of the work, 0 or more
   * @param toolRevPerMin speed nt of the tool, 0 or more
   * @param sense sense of the tool's turning
   * @throws IllegalArgumentException if a speed is negative
   */
  public static double revPerMin(double workRevPerMin, double toolRevPerMin, Sense sense) {
    Require.notNegative("workRevPerMin", workRevPerMin);
    Require.notNegative("toolRevPerMin", toolRevPerMin);
    return sense == Sense.OPPOSITE
        ? workRevPerMin + toolRevPerMin
        : Math.abs(workRevPerMin - toolRevPerMin);
  }
}
