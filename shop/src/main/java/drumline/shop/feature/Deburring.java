package drumline.shop.feature;

/**
 * A demand that the edges of a feature are free of burrs.
 *
 * @param id name of the demand
 * @param ofFeature feature whose edges must be clean
 * @param method how, or {@link Method#AUTO}
 */
public record Deburring(String id, String ofFeature, Method method) implements Feature {

  /** Ways to take burrs off. */
  public enum Method {
    /** The route's rules decide. */
    AUTO,
    /** Driven brush. */
    BRUSH,
    /** Edge followed with a small chamfer cutter. */
    CHAMFER
  }
}
