package drumline.shop.operation;

/**
 * What holds between two operations beside their order.
 *
 * @param kind what is asked
 * @param oneId one operation
 * @param otherId the other
 * @param reason why
 * @param ruleId rule that asks for it
 */
public record PairRule(Kind kind, String oneId, String otherId, String reason, String ruleId) {

  /** What can be asked of two operations. */
  public enum Kind {
    /** Same position: no index between them. */
    SAME_POSITION,
    /** Never the same position. */
    OTHER_POSITION,
    /** Never at the same time in one position. */
    NOT_TOGETHER
  }
}
