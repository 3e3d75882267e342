package drumline.store.entry;

import drumline.shop.quantity.Money;
import org.jspecify.annotations.Nullable;

/**
 * What was planned and what came out, so that the same plan can be made again.
 *
 * @param inquiryId the inquiry
 * @param revision its revision
 * @param machine name of the machine
 * @param seed start of the random sequence of the search
 * @param searchS time that the search was given, s
 * @param verdict one word or sentence, e.g. feasible
 * @param cycleS cycle, s, or null where there is no layout
 * @param boundS no layout of this route can be faster than this, s, or null
 * @param pieceCost cost of one piece, or null
 */
public record PlanHead(
    long inquiryId,
    int revision,
    String machine,
    long seed,
    double searchS,
    String verdict,
    @Nullable Double cycleS,
    @Nullable Double boundS,
    @Nullable Money pieceCost) {}
