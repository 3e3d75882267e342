package drumline.shape.section;

/**
 * A stretch of material on a straight line through a section.
 *
 * @param fromMm where it begins: z on a line along the axis, r on one across it
 * @param toMm where it ends, greater than {@code fromMm}
 */
public record Span(double fromMm, double toMm) {

  /** Whether the place is in it or at its ends. */
  public boolean covers(double atMm) {
    return fromMm <= atMm && atMm <= toMm;
  }

  /** Length in mm. */
  public double lengthMm() {
    return toMm - fromMm;
  }
}
