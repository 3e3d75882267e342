package drumline.shop.contour;

/**
 * A geometrical tolerance between two elements (ISO 1101).
 *
 * @param kind what is limited
 * @param ofElement toleranced element
 * @param toElement datum
 * @param valueMm width of the tolerance zone
 */
public record Relation(Kind kind, String ofElement, String toElement, double valueMm) {

  /** Characteristics of ISO 1101 that relate two turned elements. */
  public enum Kind {
    /** Circular run-out. */
    RUNOUT,
    /** Coaxiality. */
    COAXIALITY,
    /** Perpendicularity. */
    PERPENDICULARITY
  }
}
