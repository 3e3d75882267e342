package drumline.app.formula;

import java.util.List;
import java.util.function.Function;

/**
 * A formula of the trade that a person can ask for by name.
 *
 * @param name lower-case words joined by hyphens
 * @param topic chapter of the catalogue
 * @param title what it reckons, in one line
 * @param law the formula as text
 * @param inputs what it asks for, in order
 * @param example values that can be typed after the name as they stand
 * @param source where it comes from and how far it is known
 * @param classes the classes that reckon it
 * @param function from the values to the answer; refuses impossible ones with an
 *     IllegalArgumentException
 */
public record Formula(
    String name,
    Topic topic,
    String title,
    String law,
    List<Input> inputs,
    String example,
    String source,
    List<Class<?>> classes,
    Function<Values, Answer> function) {

  /** Copies the lists. */
  public Formula {
    inputs = List.copyOf(inputs);
    classes = List.copyOf(classes);
  }

  /** Begins a formula of a topic. */
  public static FormulaDraft named(Topic topic, String name, String title) {
    return new FormulaDraft(topic, name, title);
  }

  /** Its name. */
  @Override
  public String toString() {
    return name;
  }
}
