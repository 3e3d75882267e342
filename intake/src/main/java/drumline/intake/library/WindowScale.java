package drumline.intake.library;

import drumline.intake.form.Block;
import drumline.intake.form.Field;
import drumline.intake.form.Form;
import drumline.intake.form.Range;
import drumline.intake.form.Words;
import drumline.intake.text.Node;
import drumline.shop.material.CuttingProcess;
import drumline.shop.quantity.QuantityKind;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Cutting values taken over from another entry and multiplied as a whole: {@code scale: {speed: 85
 * %, feed: 95 %}}. The figures are multiplied as text before the entry's own are laid over them, so
 * that scales of scales multiply and what the entry writes itself stays as written.
 */
final class WindowScale {

  static final String KEY = "scale";

  /** Keys of a scale. */
  static final Form FORM = Form.of("scale of cutting values", "speed", "feed");

  private static final Range SENSIBLE = Range.between(0.05, 5);
  private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?");
  private static final Pattern GROUPED = Pattern.compile("(?<=\\d) (?=\\d{3}\\b)");
  private static final MathContext DIGITS = new MathContext(8);

  private final BigDecimal speedRatio;
  private final BigDecimal feedRatio;

  private WindowScale(double speedRatio, double feedRatio) {
    this.speedRatio = BigDecimal.valueOf(speedRatio);
    this.feedRatio = BigDecimal.valueOf(feedRatio);
  }

  /** What an entry scales its copied windows by, if it does. */
  static Optional<Node> of(Node.Keyed entry) {
    return entry.find(KEY);
  }

  /** The scale that stands in a field; its own values where a figure cannot be read. */
  static WindowScale read(Field field) {
    Optional<Block> block = field.block(FORM);
    return new WindowScale(
        block.map(b -> ratio(b, "speed")).orElse(1.0),
        block.map(b -> ratio(b, "feed")).orElse(1.0));
  }

  private static double ratio(Block scale, String key) {
    double ratio = scale.quantity(key, QuantityKind.RATIO, SENSIBLE, 1.0);
    return Double.isNaN(ratio) ? 1 : ratio;
  }

  /** The entry without its scale. */
  static Node.Keyed without(Node.Keyed entry) {
    return new Node.Keyed(
        entry.entries().stream().filter(e -> !e.key().equals(KEY)).toList(), entry.place());
  }

  /** The scale as a reader of a study sees it. */
  static String words(Node scale) {
    return scale instanceof Node.Keyed keyed
        ? keyed.entries().stream()
            .map(e -> e.key() + " " + (e.value() instanceof Node.Single one ? one.text() : "?"))
            .collect(Collectors.joining(", "))
        : scale.words();
  }

  /** The entry with the figures of each of its windows multiplied. */
  Node.Keyed applied(Node.Keyed entry) {
    return mapped(
        entry,
        "windows",
        windows ->
            windows instanceof Node.Keyed keyed
                ? new Node.Keyed(
                    keyed.entries().stream()
                        .map(e -> new Node.Entry(e.key(), e.place(), process(e.key(), e.value())))
                        .toList(),
                    keyed.place())
                : windows);
  }

  private Node process(String name, Node value) {
    boolean pitch =
        Words.find(CuttingProcess.class, name).map(CuttingProcess::feedIsPitch).orElse(false);
    return value instanceof Node.Listing list
        ? new Node.Listing(
            list.items().stream().map(item -> window(item, pitch)).toList(), list.place())
        : window(value, pitch);
  }

  private Node window(Node window, boolean pitch) {
    if (!(window instanceof Node.Keyed keyed)) {
      return window;
    }
    Node.Keyed faster = mapped(keyed, "speed", node -> times(node, speedRatio));
    Node.Keyed lasting =
        mapped(
            faster,
            "life",
            life ->
                life instanceof Node.Keyed block
                    ? mapped(block, "one-minute-speed", node -> times(node, speedRatio))
                    : life);
    return pitch ? lasting : mapped(lasting, "feed", node -> times(node, feedRatio));
  }

  private static Node.Keyed mapped(Node.Keyed entry, String key, UnaryOperator<Node> change) {
    return new Node.Keyed(
        entry.entries().stream()
            .map(
                e ->
                    e.key().equals(key)
                        ? new Node.Entry(key, e.place(), change.apply(e.value()))
                        : e)
            .toList(),
        entry.place());
  }

  /** A text with each of its numbers multiplied. */
  private static Node times(Node node, BigDecimal ratio) {
    if (!(node instanceof Node.Single single)) {
      return node;
    }
    String plain = GROUPED.matcher(single.text()).replaceAll("");
    String scaled =
        NUMBER
            .matcher(plain)
            .replaceAll(
                m ->
                    new BigDecimal(m.group())
                        .multiply(ratio)
                        .round(DIGITS)
                        .stripTrailingZeros()
                        .toPlainString());
    return new Node.Single(scaled, single.place());
  }
}
