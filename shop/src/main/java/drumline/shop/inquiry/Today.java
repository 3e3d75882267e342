package drumline.shop.inquiry;

import java.math.BigDecimal;

/**
 * How the customer makes the piece now.
 *
 * @param how machine or supplier, in words
 * @param cycleS time per piece, 0 where it is bought
 * @param costPerPiece what a piece costs now
 * @param currency ISO 4217 code
 */
public record Today(String how, double cycleS, BigDecimal costPerPiece, String currency) {}
