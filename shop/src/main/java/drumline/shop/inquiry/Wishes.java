package drumline.shop.inquiry;

import drumline.shop.operation.OrderRule;
import java.util.List;

/**
 * What the user decides beyond the print.
 *
 * @param machines machines to plan on, by name; empty for the library's best fit
 * @param orders order constraints of the user's own
 * @param pins places that the user fixes
 * @param leaveOut operations that are not wanted, by id
 */
public record Wishes(
    List<String> machines, List<OrderRule> orders, List<Pin> pins, List<String> leaveOut) {

  /** Copies the lists. */
  public Wishes {
    machines = List.copyOf(machines);
    orders = List.copyOf(orders);
    pins = List.copyOf(pins);
    leaveOut = List.copyOf(leaveOut);
  }
}
