package drumline.shop.inquiry;

/**
 * How many pieces are wanted.
 *
 * @param perYearCount pieces in a year
 * @param perLotCount pieces from one set-up
 * @param yearsCount years that the demand lasts
 */
public record Volumes(long perYearCount, long perLotCount, double yearsCount) {}
