package drumline.economics.triage;

/**
 * What one rule says about a piece, with the figure behind it.
 *
 * @param ruleId rule
 * @param text the rule in plain words
 * @param figure what the piece has, with unit
 * @param limit what the rule asks, with unit
 * @param verdict what follows
 * @param source where the rule comes from
 */
public record RuleFinding(
    String ruleId, String text, String figure, String limit, Verdict verdict, String source) {}
