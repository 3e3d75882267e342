package drumline.intake.head;

import drumline.intake.form.Block;
import drumline.intake.form.Field;
import drumline.intake.form.Form;
import drumline.intake.form.Range;
import drumline.shop.inquiry.Pin;
import drumline.shop.inquiry.Wishes;
import drumline.shop.operation.OrderRule;
import drumline.shop.quantity.QuantityKind;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** Reads what the user decides beyond the print. */
public final class WishesForm {

  /** Keys of the wishes. */
  public static final Form FORM = Form.of("wishes", "machines", "orders", "pins", "leave-out");

  /** Keys of an order constraint of the user's own. */
  public static final Form ORDER = Form.of("order", "before", "after", "reason");

  /** Keys of a pin. */
  public static final Form PIN =
      Form.of("pin", "operation", "position", "slide", "speed", "not-position", "with");

  private static final String RULE_ID = "user";

  private WishesForm() {}

  /** Reads the block. */
  public static Wishes read(Block block) {
    return new Wishes(
        block.items("machines").stream().map(Field::text).toList(),
        block.items("orders").stream().flatMap(f -> open(f, ORDER)).map(WishesForm::order).toList(),
        block.items("pins").stream().flatMap(f -> open(f, PIN)).map(WishesForm::pin).toList(),
        block.items("leave-out").stream().map(Field::text).toList());
  }

  /** No wishes at all. */
  public static Wishes none() {
    return new Wishes(List.of(), List.of(), List.of(), List.of());
  }

  private static Stream<Block> open(Field field, Form form) {
    return field.block(form).stream();
  }

  private static OrderRule order(Block block) {
    return new OrderRule(
        block.text("before"),
        block.text("after"),
        block.text("reason", "as the user asks"),
        RULE_ID);
  }

  private static Pin pin(Block block) {
    String operation = block.text("operation");
    Optional<Double> position = block.find("position").map(f -> f.number(Range.between(1, 20)));
    Optional<Double> speed =
        block.find("speed").map(f -> f.quantity(QuantityKind.ROTATION, Range.POSITIVE));
    String slide = block.text("slide", "");
    Optional<Double> not = block.find("not-position").map(f -> f.number(Range.between(1, 20)));
    String with = block.text("with", "");
    boolean placed = position.isPresent() || not.isPresent() || !slide.isEmpty();
    if (!placed && speed.isEmpty() && with.isEmpty()) {
      block.report(
          "pin-empty",
          "a pin that fixes nothing",
          "position, not-position, slide, speed or with",
          "");
    }
    return new Pin(
        operation,
        whole(position),
        slide,
        speed.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
        whole(not),
        with);
  }

  private static OptionalInt whole(Optional<Double> number) {
    return number.map(p -> OptionalInt.of((int) Math.round(p))).orElse(OptionalInt.empty());
  }
}
