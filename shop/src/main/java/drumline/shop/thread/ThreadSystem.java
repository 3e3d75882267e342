package drumline.shop.thread;

/** The standard a thread belongs to. */
public enum ThreadSystem {
  /** Metric screw thread M; [ISO-261], [ISO-965-1]. */
  METRIC(60, 0),
  /** Unified inch screw thread UNC, UNF, UNEF; [ASME-B1.1]. */
  UNIFIED(60, 0),
  /** Pipe thread G, not tight on the thread; [ISO-228-1]. */
  PIPE_G(55, 0),
  /** Pipe thread R, taper, external, tight on the thread; [ISO-7-1]. */
  PIPE_R(55, 1.0 / 16),
  /** Pipe thread Rp, parallel, internal, tight on the thread; [ISO-7-1]. */
  PIPE_RP(55, 0),
  /** Pipe thread Rc, taper, internal, tight on the thread; [ISO-7-1]. */
  PIPE_RC(55, 1.0 / 16),
  /** Pipe thread NPT, taper; [ASME-B1.20.1]. */
  PIPE_NPT(60, 1.0 / 16);

  private final double angleDeg;
  private final double taperRatio;

  ThreadSystem(double angleDeg, double taperRatio) {
    this.angleDeg = angleDeg;
    this.taperRatio = taperRatio;
  }

  /** Angle between the flanks, deg. */
  public double angleDeg() {
    return angleDeg;
  }

  /** Growth of the diameter over length; 0 for parallel threads. */
  public double taperRatio() {
    return taperRatio;
  }
}
