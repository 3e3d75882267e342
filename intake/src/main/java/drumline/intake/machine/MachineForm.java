package drumline.intake.machine;

import drumline.intake.form.Block;
import drumline.intake.form.Field;
import drumline.intake.form.Form;
import drumline.intake.form.Prices;
import drumline.intake.form.Range;
import drumline.intake.form.Words;
import drumline.intake.head.RatesForm;
import drumline.shop.machine.BarFeed;
import drumline.shop.machine.Equipment;
import drumline.shop.machine.Indexing;
import drumline.shop.machine.Machine;
import drumline.shop.machine.MachineCost;
import drumline.shop.machine.Position;
import drumline.shop.quantity.MoneyPer;
import drumline.shop.quantity.QuantityKind;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a machine. */
public final class MachineForm {

  /** Keys of a machine. */
  public static final Form FORM =
      Form.of(
          "machine",
          "name",
          "from",
          "title",
          "kind",
          "index",
          "double-index",
          "longest-piece",
          "drive",
          "workholding",
          "bar-feed",
          "slide-types",
          "positions",
          "pick-up",
          "cost",
          "source");

  /** Keys of the bar feed. */
  public static final Form BAR_FEED =
      Form.of("bar feed", "capacity", "bar-length", "remnant", "feed-out", "bar-change", "loading");

  /** Keys of the cost. */
  public static final Form COST =
      Form.of(
          "machine cost",
          "price",
          "options",
          "most-options",
          "hour-rate",
          "set-up",
          "machines-per-operator",
          "availability");

  private static final double HOUR_S = 3600;

  private MachineForm() {}

  /** The machine; empty where a block that it needs is absent. */
  public static Optional<Machine> read(Block block) {
    SlideForm slides = SlideForm.read(block);
    List<Position> positions = slides.positions(block.items("positions"));
    if (positions.isEmpty()) {
      block.report("key-missing", "no positions", "one position or more under \"positions\"", "");
    }
    Optional<Block> drive = require(block, "drive", DriveForm.DRIVE);
    Optional<Block> holding = require(block, "workholding", DriveForm.WORKHOLDING);
    Optional<Block> bars = require(block, "bar-feed", BAR_FEED);
    Optional<Block> cost = require(block, "cost", COST);
    if (drive.isEmpty() || holding.isEmpty() || bars.isEmpty() || cost.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Machine(
            block.text("name"),
            block.text("title"),
            block.choice("kind", Machine.Kind.class),
            positions,
            DriveForm.drive(drive.get()),
            DriveForm.workholding(holding.get()),
            block
                .block("pick-up", PickUpForm.FORM)
                .map(b -> PickUpForm.read(b, slides))
                .orElse(null),
            barFeed(bars.get()),
            block.quantity("index", QuantityKind.TIME, Range.above0To(60)),
            block.quantity("longest-piece", QuantityKind.LENGTH, Range.POSITIVE),
            cost(cost.get()),
            block.text("source"),
            new Indexing(
                1, block.quantity("double-index", QuantityKind.TIME, Range.above0To(60), 0.0))));
  }

  private static Optional<Block> require(Block block, String key, Form form) {
    return block.require(key).flatMap(f -> f.block(form));
  }

  private static BarFeed barFeed(Block block) {
    return new BarFeed(
        block.quantity("capacity", QuantityKind.LENGTH, Range.POSITIVE),
        block.quantity("bar-length", QuantityKind.LENGTH, Range.POSITIVE),
        block.quantity("remnant", QuantityKind.LENGTH, Range.NOT_NEGATIVE),
        block.quantity("feed-out", QuantityKind.TIME, Range.NOT_NEGATIVE),
        block.quantity("bar-change", QuantityKind.TIME, Range.NOT_NEGATIVE),
        block.choice("loading", BarFeed.Loading.class));
  }

  private static MachineCost cost(Block block) {
    Prices prices = new Prices();
    BigDecimal price = prices.read(block, "price", MoneyPer.WHOLE);
    Map<Equipment, BigDecimal> options = new EnumMap<>(Equipment.class);
    block
        .find("options")
        .ifPresent(
            field ->
                field
                    .named()
                    .forEach(
                        n ->
                            equipment(n)
                                .ifPresent(
                                    e ->
                                        options.put(e, prices.amount(n.field(), MoneyPer.WHOLE)))));
    BigDecimal hourRate = prices.read(block, "hour-rate", MoneyPer.HOUR);
    return new MachineCost(
        prices.currency(),
        price,
        options,
        limits(block),
        hourRate,
        block.quantity("set-up", QuantityKind.TIME, Range.POSITIVE) / HOUR_S,
        block.number("machines-per-operator", Range.above0To(20)),
        RatesForm.percent(
            block.quantity("availability", QuantityKind.RATIO, Range.between(0.05, 1))));
  }

  private static Map<Equipment, Integer> limits(Block block) {
    Map<Equipment, Integer> limits = new EnumMap<>(Equipment.class);
    block
        .find("most-options")
        .ifPresent(
            field ->
                field
                    .named()
                    .forEach(
                        n ->
                            equipment(n)
                                .ifPresent(
                                    e ->
                                        limits.put(
                                            e,
                                            (int)
                                                Math.round(
                                                    n.field().number(Range.between(0, 99)))))));
    return limits;
  }

  static Optional<Equipment> equipment(Field.Named named) {
    Optional<Equipment> found = Words.find(Equipment.class, named.name());
    if (found.isEmpty()) {
      List<String> known = Words.all(Equipment.class);
      named
          .field()
          .report(
              "unknown-word",
              "\"" + named.name() + "\"",
              "one of " + String.join(", ", known),
              Words.maybe(named.name(), known));
    }
    return found;
  }
}
