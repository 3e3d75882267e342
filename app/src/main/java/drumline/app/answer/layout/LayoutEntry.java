package drumline.app.answer.layout;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A stored layout in a list.
 *
 * @param layoutId its name
 * @param machineName the machine
 * @param machineTitle as a reader knows it
 * @param origin planned or moved
 * @param cycleS cycle
 * @param lowerBoundS bound
 * @param pieceCost cost of a good piece, or null where it cannot be reckoned
 * @param currency ISO 4217 code
 * @param textRevision revision that it was made for
 * @param madeAt when, ISO 8601 in UTC
 * @param madeBy who
 * @param note how it was made
 * @param isPresent whether it is the present one
 */
public record LayoutEntry(
    String layoutId,
    String machineName,
    String machineTitle,
    String origin,
    double cycleS,
    double lowerBoundS,
    @Nullable BigDecimal pieceCost,
    String currency,
    int textRevision,
    String madeAt,
    String madeBy,
    String note,
    boolean isPresent) {}
