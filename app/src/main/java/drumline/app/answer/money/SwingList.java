package drumline.app.answer.money;

import java.math.BigDecimal;
import java.util.List;

/**
 * Which assumption moves the piece cost most.
 *
 * @param changePct share that each was changed by
 * @param effects greatest first
 */
public record SwingList(double changePct, List<Swing> effects) {
  /** Copies the lists. */
  public SwingList {
    effects = List.copyOf(effects);
  }

  /**
   * What one assumption does.
   *
   * @param assumed short name
   * @param words the same in words
   * @param costWhenLess with less of it
   * @param costWhenMore with more of it
   * @param swing distance between both
   */
  public record Swing(
      String assumed,
      String words,
      BigDecimal costWhenLess,
      BigDecimal costWhenMore,
      BigDecimal swing) {}
}
