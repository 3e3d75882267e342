package drumline.app.answer.layout;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Two stored layouts side by side.
 *
 * @param one one
 * @param other the other
 * @param figures figures of both
 * @param differences operations that stand elsewhere or run at another speed
 */
public record Comparison(
    LayoutEntry one, LayoutEntry other, List<Figure> figures, List<Difference> differences) {
  /** Copies the lists. */
  public Comparison {
    figures = List.copyOf(figures);
    differences = List.copyOf(differences);
  }

  /**
   * One figure of both.
   *
   * @param words what
   * @param unit its unit
   * @param one of the one
   * @param other of the other
   */
  public record Figure(
      String words, String unit, @Nullable BigDecimal one, @Nullable BigDecimal other) {}

  /**
   * An operation that is not the same in both.
   *
   * @param operationId the operation
   * @param title as a process sheet says it
   * @param oneSlideId slide in the one
   * @param otherSlideId slide in the other
   * @param onePosition position in the one
   * @param otherPosition position in the other
   * @param oneRevPerMin speed in the one
   * @param otherRevPerMin speed in the other
   */
  public record Difference(
      String operationId,
      String title,
      @Nullable String oneSlideId,
      @Nullable String otherSlideId,
      @Nullable Integer onePosition,
      @Nullable Integer otherPosition,
      @Nullable Double oneRevPerMin,
      @Nullable Double otherRevPerMin) {}
}
