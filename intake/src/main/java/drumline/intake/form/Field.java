package drumline.intake.form;

import drumline.intake.text.Node;
import drumline.shop.problem.Problem;
import drumline.shop.quantity.Money;
import drumline.shop.quantity.MoneyParsed;
import drumline.shop.quantity.MoneyPer;
import drumline.shop.quantity.MoneyReader;
import drumline.shop.quantity.Parsed;
import drumline.shop.quantity.QuantityKind;
import drumline.shop.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One value of a file with the keys that lead to it. Each way of reading reports what is wrong and
 * goes on.
 *
 * @param node the value
 * @param path keys that lead to it, list items counted from 1
 * @param reading the run
 */
public record Field(Node node, String path, Reading reading) {

  /** The value as text; empty, and reported, where it is a list or a block. */
  public String text() {
    if (node instanceof Node.Single single) {
      return single.text().strip();
    }
    report("wrong-kind", node.words(), "a single value", "");
    return "";
  }

  /** Items of a list; a single value counts as a list of one. */
  public List<Field> items() {
    if (node instanceof Node.Listing listing) {
      List<Field> items = new ArrayList<>();
      for (int i = 0; i < listing.items().size(); i++) {
        items.add(new Field(listing.items().get(i), path + "[" + (i + 1) + "]", reading));
      }
      return items;
    }
    return List.of(this);
  }

  /** The value as a block of keys. */
  public Optional<Block> block(Form form) {
    if (node instanceof Node.Keyed keyed) {
      return Optional.of(Block.open(keyed, form, path, reading));
    }
    report(
        "wrong-kind",
        node.words(),
        "a block with the keys of " + form.name() + ": " + String.join(", ", form.keys()),
        "");
    return Optional.empty();
  }

  /** The keys of a block whose keys are names of the user's own, each with its field. */
  public List<Named> named() {
    if (node instanceof Node.Keyed keyed) {
      return keyed.entries().stream()
          .map(e -> new Named(e.key(), new Field(e.value(), path + "." + e.key(), reading)))
          .toList();
    }
    report("wrong-kind", node.words(), "a block of names with values", "");
    return List.of();
  }

  /** One of an enum's words. */
  public <E extends Enum<E>> Optional<E> choice(Class<E> kind) {
    if (!(node instanceof Node.Single)) {
      report("wrong-kind", node.words(), "one of " + String.join(", ", Words.all(kind)), "");
      return Optional.empty();
    }
    Optional<E> found = Words.find(kind, text());
    if (found.isEmpty()) {
      String hint = Words.maybe(text(), Words.all(kind));
      report("unknown-word", node.words(), "one of " + String.join(", ", Words.all(kind)), hint);
    }
    return found;
  }

  /** The quantity in its kind's internal unit, or NaN where it cannot be read. */
  public double quantity(QuantityKind kind, Range range) {
    if (!(node instanceof Node.Single)) {
      report("wrong-kind", node.words(), kind.words() + " with its unit", "");
      return Double.NaN;
    }
    return Quantities.read(this, text(), kind, range);
  }

  /** A part of the value's text as a quantity in its kind's internal unit; NaN where it is none. */
  public double quantityOf(String part, QuantityKind kind, Range range) {
    return Quantities.read(this, part, kind, range);
  }

  /** A plain number without unit, or NaN where it cannot be read. */
  public double number(Range range) {
    if (!(node instanceof Node.Single)) {
      report("wrong-kind", node.words(), "a number", "");
      return Double.NaN;
    }
    return Quantities.number(this, text(), range);
  }

  /** An amount of money, if it can be read and is not negative. */
  public Optional<Money> money(MoneyPer per) {
    if (!(node instanceof Node.Single)) {
      report("wrong-kind", node.words(), "an amount with its currency", "");
      return Optional.empty();
    }
    MoneyParsed parsed = MoneyReader.read(text(), per);
    if (parsed instanceof Parsed.Refused refused) {
      reading.add(refused.toProblem(where()));
      return Optional.empty();
    }
    Money money = ((MoneyParsed.Value) parsed).money();
    if (money.amount().signum() < 0) {
      report("out-of-range", node.words(), "0 or more", "");
      return Optional.empty();
    }
    return Optional.of(money);
  }

  /** Unit system of the file the value stands in; metric where it declares none. */
  public UnitSystem system() {
    return reading.findSystem(node.place().file()).orElse(UnitSystem.METRIC);
  }

  /** Whether the file declares a unit system. */
  boolean systemDeclared() {
    return reading.findSystem(node.place().file()).isPresent();
  }

  /** Adds a problem about this value. */
  public void report(String code, String found, String allowed, String hint) {
    reading.add(Problem.error(code, where(), found, allowed, hint));
  }

  /** Where the value stands, with its path. */
  public String where() {
    return node.place().toText() + " " + path;
  }

  /**
   * A field under a name of the user's own.
   *
   * @param name the name
   * @param field the value
   */
  public record Named(String name, Field field) {}
}
