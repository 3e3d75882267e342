package drumline.intake.library;

import drumline.intake.form.Block;
import drumline.intake.form.Field;
import drumline.intake.form.Form;
import drumline.intake.form.Range;
import drumline.intake.form.Words;
import drumline.shop.material.Confidence;
import drumline.shop.material.CuttingProcess;
import drumline.shop.material.CuttingWindow;
import drumline.shop.material.CuttingWindow.TaylorConstants;
import drumline.shop.material.ToolMaterial;
import drumline.shop.quantity.QuantityKind;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads the cutting values of a material: under each process one window, or several. */
public final class WindowForm {

  /** Keys of a window. */
  public static final Form FORM =
      Form.of("cutting window", "tool", "speed", "feed", "depth", "life", "confidence", "source");

  /** Keys of the tool life. */
  public static final Form LIFE = Form.of("tool life", "exponent", "one-minute-speed");

  private WindowForm() {}

  /**
   * The windows of a process.
   *
   * @param known confidence where a window does not say its own
   */
  static Stream<CuttingWindow> read(Field.Named named, Confidence known) {
    Optional<CuttingProcess> process = Words.find(CuttingProcess.class, named.name());
    if (process.isEmpty()) {
      List<String> words = Words.all(CuttingProcess.class);
      named
          .field()
          .report(
              "unknown-word",
              "\"" + named.name() + "\"",
              "one of " + String.join(", ", words),
              Words.maybe(named.name(), words));
      return Stream.empty();
    }
    return named.field().items().stream()
        .flatMap(item -> item.block(FORM).stream())
        .map(block -> window(process.get(), block, known));
  }

  private static CuttingWindow window(CuttingProcess process, Block block, Confidence known) {
    SpanText nothing = new SpanText(Double.NaN, Double.NaN);
    SpanText speed =
        block
            .require("speed")
            .map(f -> SpanText.read(f, QuantityKind.SPEED_SURFACE))
            .orElse(nothing);
    SpanText feed = block.require("feed").map(f -> feed(process, f)).orElse(nothing);
    return new CuttingWindow(
        process,
        block.choice("tool", ToolMaterial.class),
        speed.low(),
        speed.high(),
        feed.low(),
        feed.high(),
        block.quantity("depth", QuantityKind.LENGTH, Range.POSITIVE),
        block
            .require("life")
            .flatMap(f -> f.block(LIFE))
            .map(WindowForm::life)
            .orElse(new TaylorConstants(Double.NaN, Double.NaN)),
        block.choice("confidence", Confidence.class, known),
        block.text("source"));
  }

  private static SpanText feed(CuttingProcess process, Field field) {
    return switch (process) {
      case DRILL -> SpanText.readOfDiameter(field);
      case MILL -> SpanText.read(field, QuantityKind.FEED_PER_TOOTH);
      case SLOT -> SpanText.read(field, QuantityKind.LENGTH);
      default -> SpanText.read(field, QuantityKind.FEED_PER_REV);
    };
  }

  private static TaylorConstants life(Block block) {
    return new TaylorConstants(
        block.number("exponent", Range.between(0.05, 0.9)),
        block.quantity("one-minute-speed", QuantityKind.SPEED_SURFACE, Range.POSITIVE));
  }
}
