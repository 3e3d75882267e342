package drumline.shop.operation;

/**
 * One operation must be finished before another begins.
 *
 * @param beforeId operation that comes first
 * @param afterId operation that follows
 * @param reason why, in words a setter accepts
 * @param ruleId rule that asks for it
 */
public record OrderRule(String beforeId, String afterId, String reason, String ruleId) {}
