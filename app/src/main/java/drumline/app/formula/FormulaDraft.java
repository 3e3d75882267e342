package drumline.app.formula;

import drumline.app.formula.Input.Need;
import drumline.app.formula.Input.Usual;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** A formula while it is being declared: inputs in order, then what reckons it. */
public final class FormulaDraft {
  private final Topic topic;
  private final String name;
  private final String title;
  private final List<Input> inputs = new ArrayList<>();
  private String law = "";
  private String source = "";
  private String example = "";

  FormulaDraft(Topic topic, String name, String title) {
    this.topic = topic;
    this.name = name;
    this.title = title;
  }

  /** The formula as text. */
  public FormulaDraft law(String text) {
    law = text;
    return this;
  }

  /** Where it comes from. */
  public FormulaDraft source(String text) {
    source = text;
    return this;
  }

  /** Values that can be typed after the name. */
  public FormulaDraft example(String text) {
    example = text;
    return this;
  }

  /** An input that must be given. */
  public FormulaDraft in(String key, Measure measure, String meaning, Allowed allowed) {
    return add(key, measure, meaning, allowed, Need.REQUIRED, "", List.of());
  }

  /** An input with a value of its own when it is not given. */
  public FormulaDraft in(
      String key, Measure measure, String meaning, Allowed allowed, String standard) {
    return add(key, measure, meaning, allowed, Need.STANDARD, standard, List.of());
  }

  /** An input that may be left out. */
  public FormulaDraft optional(String key, Measure measure, String meaning, Allowed allowed) {
    return add(key, measure, meaning, allowed, Need.OPTIONAL, "", List.of());
  }

  /** Several values joined by colons. */
  public FormulaDraft several(String key, Measure measure, String meaning, Allowed allowed) {
    return add(key, measure, meaning, allowed, Need.SEVERAL, "", List.of());
  }

  /** One of the words of an enum. */
  public <E extends Enum<E>> FormulaDraft choice(String key, String meaning, E standard) {
    List<String> words =
        Arrays.stream(standard.getDeclaringClass().getEnumConstants())
            .map(FormulaDraft::word)
            .toList();
    return add(key, Measure.CHOICE, meaning, Allowed.ANY, Need.STANDARD, word(standard), words);
  }

  /** One of some words. */
  public FormulaDraft choice(String key, String meaning, List<String> words, String standard) {
    return add(key, Measure.CHOICE, meaning, Allowed.ANY, Need.STANDARD, standard, words);
  }

  /** One of some words, which may be left out. */
  public FormulaDraft optionalChoice(String key, String meaning, List<String> words) {
    return add(key, Measure.CHOICE, meaning, Allowed.ANY, Need.OPTIONAL, "", words);
  }

  /** A range that practice or measurement knows, for the input declared last. */
  public FormulaDraft usual(Allowed range, String consequence) {
    int last = inputs.size() - 1;
    inputs.set(last, inputs.get(last).withUsual(new Usual(range, consequence)));
    return this;
  }

  /** Whatever a group of formulas shares. */
  public FormulaDraft with(Function<FormulaDraft, FormulaDraft> shared) {
    return shared.apply(this);
  }

  /**
   * Ends the declaration.
   *
   * @param function from the values to the answer
   * @param classes the classes that reckon it
   */
  public Formula by(Function<Values, Answer> function, Class<?>... classes) {
    return new Formula(
        name, topic, title, law, inputs, example, source, List.of(classes), function);
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private FormulaDraft add(
      String key,
      Measure measure,
      String meaning,
      Allowed allowed,
      Need need,
      String standard,
      List<String> words) {
    inputs.add(new Input(key, measure, meaning, allowed, need, standard, words, Optional.empty()));
    return this;
  }
}
