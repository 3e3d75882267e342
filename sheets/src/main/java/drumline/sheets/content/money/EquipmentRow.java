package drumline.sheets.content.money;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * Something the machine must be fitted with.
 *
 * @param place slide or machine
 * @param equipment what
 * @param neededFor operations that need it
 * @param price price where it is an option; empty where it belongs to the machine
 */
public record EquipmentRow(
    String place, String equipment, String neededFor, Optional<BigDecimal> price) {}
