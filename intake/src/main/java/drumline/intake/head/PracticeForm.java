package drumline.intake.head;

import drumline.intake.form.Block;
import drumline.intake.form.Field;
import drumline.intake.form.Form;
import drumline.intake.form.Range;
import drumline.intake.form.UnitsField;
import drumline.intake.form.Words;
import drumline.intake.text.Node;
import drumline.shop.inquiry.Overrides;
import drumline.shop.material.IsoGroup;
import drumline.shop.operation.OperationKind;
import drumline.shop.quantity.QuantityKind;
import java.util.List;
import java.util.stream.Stream;

/**
 * Reads what a shop does otherwise than the rules and tables that ship: in an inquiry's {@code
 * overrides}, or in a file of its own. Names of rules and allowances are checked where the rules
 * are.
 */
public final class PracticeForm {

  /** Keys of the rules that are switched off, of allowances, and of what operations reach. */
  public static final List<String> KEYS = List.of("rules", "allowances", "capability");

  /** Keys at the top of a file. */
  public static final Form FILE =
      Form.of("practice file", UnitsField.KEY, KEYS.get(0), KEYS.get(1), KEYS.get(2));

  /** Keys of a rule. */
  public static final Form RULE = Form.of("rule switch", "off");

  /** Keys of what an operation reaches. */
  public static final Form REACHED =
      Form.of(
          "capability",
          "operation",
          "group",
          "above",
          "to",
          "grade",
          "grade-with-care",
          "roughness",
          "roughness-with-care",
          "source");

  private static final double ALL_MM = 10_000;
  private static final Range GRADES = Range.between(3, 18);

  private PracticeForm() {}

  /** Reads the keys of a block that may hold others too. */
  public static Overrides read(Block block) {
    return new Overrides(
        block.find(KEYS.get(0)).map(Field::named).orElse(List.of()).stream()
            .flatMap(PracticeForm::rule)
            .toList(),
        block.find(KEYS.get(1)).map(Field::named).orElse(List.of()).stream()
            .map(n -> new Overrides.Allowance(n.name(), n.field().text(), n.field().where()))
            .toList(),
        block.items(KEYS.get(2)).stream().flatMap(PracticeForm::reached).toList());
  }

  private static Stream<Overrides.RuleOff> rule(Field.Named named) {
    return named.field().block(RULE).stream()
        .flatMap(
            block ->
                block.require("off").stream()
                    .map(
                        why ->
                            new Overrides.RuleOff(
                                named.name(), why.text(), named.field().where())));
  }

  private static Stream<Overrides.Reached> reached(Field field) {
    return field.block(REACHED).stream().map(block -> reached(block, field.where()));
  }

  private static Overrides.Reached reached(Block block, String where) {
    double ra = roughness(block, "roughness");
    double careRa =
        block.find("roughness-with-care").isPresent()
            ? roughness(block, "roughness-with-care")
            : ra;
    int grade = grade(block, "grade");
    int care = block.find("grade-with-care").isPresent() ? grade(block, "grade-with-care") : grade;
    if (care > grade || careRa > ra) {
      block.report(
          "care-coarser", "with care coarser than as a rule", "a finer or equal value", "");
    }
    OperationKind kind = block.choice("operation", OperationKind.class);
    String group =
        block.find("group").flatMap(f -> f.choice(IsoGroup.class)).map(Words::of).orElse("");
    return new Overrides.Reached(
        Words.of(kind),
        group,
        block.quantity("above", QuantityKind.LENGTH, Range.NOT_NEGATIVE, 0.0),
        block.quantity("to", QuantityKind.LENGTH, Range.POSITIVE, ALL_MM),
        grade,
        care,
        ra,
        careRa,
        block.text("source"),
        where);
  }

  private static int grade(Block block, String key) {
    return block
        .require(key)
        .map(f -> (int) Math.round(new Field(plain(f), f.path(), f.reading()).number(GRADES)))
        .orElse(0);
  }

  private static Node plain(Field grade) {
    return new Node.Single(grade.text().replaceFirst("^IT\\s*", ""), grade.node().place());
  }

  private static double roughness(Block block, String key) {
    return block.quantity(key, QuantityKind.ROUGHNESS, Range.POSITIVE);
  }
}
