package drumline.app.answer;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * Figures of an inquiry's head line; null where they are not known yet.
 *
 * @param verdict whether the piece belongs on a multi-spindle
 * @param verdictWords the same in words
 * @param cycleS time from one index to the next
 * @param lowerBoundS no layout can have a shorter cycle
 * @param gapPct share of the cycle above the bound
 * @param isProvenOptimal whether the layout was proven the best
 * @param governingPosition position that sets the cycle
 * @param governingWords the same in words
 * @param netPerHour good pieces in an hour
 * @param machinesCount machines needed
 * @param loadPct hours needed over hours of the machines needed
 * @param pieceCost cost of a good piece
 * @param todayCost what a piece costs today
 * @param currency ISO 4217 code
 * @param paybackMonths simple payback, rounded up
 * @param paybackWords payback as a sentence
 * @param ruleBreachCount rules that the present layout breaks
 */
public record Head(
    @Nullable String verdict,
    @Nullable String verdictWords,
    @Nullable Double cycleS,
    @Nullable Double lowerBoundS,
    @Nullable Double gapPct,
    @Nullable Boolean isProvenOptimal,
    @Nullable Integer governingPosition,
    @Nullable String governingWords,
    @Nullable Double netPerHour,
    @Nullable Integer machinesCount,
    @Nullable Double loadPct,
    @Nullable BigDecimal pieceCost,
    @Nullable BigDecimal todayCost,
    @Nullable String currency,
    @Nullable Long paybackMonths,
    @Nullable String paybackWords,
    @Nullable Integer ruleBreachCount) {}
