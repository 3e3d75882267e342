package drumline.shop.tooling;

import java.math.BigDecimal;
import java.util.Locale;

/**
 * One tool as it stands in the machine.
 *
 * @param family family it belongs to
 * @param sizeMm diameter, or cutting width of a blade
 * @param price price of one tool or insert
 */
public record Tool(ToolFamily family, double sizeMm, BigDecimal price) {

  /** As a tool list names it: family and size where the size says something. */
  public String label() {
    return switch (family.kind()) {
      case TURNING_ROUGH, TURNING_FINISH, THREADING, THREAD_ROLLING, KNURLING, BURNISHING ->
          family.name();
      default -> String.format(Locale.ROOT, "%s %s", family.name(), trimmed(sizeMm) + " mm");
    };
  }

  private static String trimmed(double value) {
    return new BigDecimal(String.format(Locale.ROOT, "%.3f", value))
        .stripTrailingZeros()
        .toPlainString();
  }
}
