package drumline.shop.thread;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A standard thread with its basic sizes, limits and starting diameters.
 *
 * @param designation its name in the standard, without class and hand, e.g. {@code M12x1}, {@code
 *     1/4-20 UNC}, {@code G 1/4}
 * @param system the standard it belongs to
 * @param hand which way it winds
 * @param toleranceClass classes of the limits, external before internal, e.g. {@code 6g/6H}; empty
 *     for taper threads
 * @param majorMm basic major diameter, mm; of a taper thread at the gauge plane
 * @param pitchMm distance from thread to thread, mm
 * @param pitchDiameterMm basic pitch diameter, mm; of a taper thread at the gauge plane
 * @param minorMm basic minor diameter of the internal thread, mm; of a taper thread at the gauge
 *     plane
 * @param external limits of the external thread; empty for Rp and Rc
 * @param internal limits of the internal thread; empty for R
 * @param taper where a taper thread is gauged; empty for a parallel thread
 * @param start what to make it from
 */
public record ThreadSize(
    String designation,
    ThreadSystem system,
    ThreadHand hand,
    String toleranceClass,
    double majorMm,
    double pitchMm,
    double pitchDiameterMm,
    double minorMm,
    Optional<ExternalLimits> external,
    Optional<InternalLimits> internal,
    Optional<TaperLengths> taper,
    ThreadStart start) {

  /** Angle between the flanks, deg. */
  public double angleDeg() {
    return system.angleDeg();
  }

  /** Growth of the diameter over length; 0 for parallel threads. */
  public double taperRatio() {
    return system.taperRatio();
  }

  /** The same thread wound the other way. */
  public ThreadSize withHand(ThreadHand newHand) {
    return new ThreadSize(
        designation,
        system,
        newHand,
        toleranceClass,
        majorMm,
        pitchMm,
        pitchDiameterMm,
        minorMm,
        external,
        internal,
        taper,
        start);
  }

  /**
   * Limits of an external thread; for a taper thread at the gauge plane.
   *
   * @param majorMaxMm largest major diameter, mm
   * @param majorMinMm smallest major diameter, mm
   * @param pitchMaxMm largest pitch diameter, mm
   * @param pitchMinMm smallest pitch diameter, mm
   */
  public record ExternalLimits(
      double majorMaxMm, double majorMinMm, double pitchMaxMm, double pitchMinMm) {}

  /**
   * Limits of an internal thread; for a taper thread at the gauge plane.
   *
   * @param minorMinMm smallest minor diameter, mm
   * @param minorMaxMm largest minor diameter, mm
   * @param pitchMinMm smallest pitch diameter, mm
   * @param pitchMaxMm largest pitch diameter, mm
   */
  public record InternalLimits(
      double minorMinMm, double minorMaxMm, double pitchMinMm, double pitchMaxMm) {}

  /**
   * Diameters to make a thread from: common practice, to be proven on the first pieces.
   *
   * @param tapDrillMm drill before a cutting tap, mm; empty for a thread that is only external
   * @param formTapDrillMm drill before a form tap, mm; empty where forming is not usual
   * @param rollBlankMm diameter to turn before rolling, mm: the middle of the pitch diameter's
   *     limits; empty for a thread that is only internal, or taper
   */
  public record ThreadStart(
      OptionalDouble tapDrillMm, OptionalDouble formTapDrillMm, OptionalDouble rollBlankMm) {}

  /**
   * Where a taper thread is gauged.
   *
   * @param gaugeMm from the small end of the external thread to the gauge plane, mm
   * @param gaugeShiftMm how far the gauge plane may lie off, plus or minus, mm
   * @param usefulMm least length of useful thread, mm
   */
  public record TaperLengths(double gaugeMm, double gaugeShiftMm, double usefulMm) {}

  /** Which way a thread winds. */
  public enum ThreadHand {
    /** The usual way. */
    RIGHT,
    /** Marked LH on prints. */
    LEFT
  }
}
