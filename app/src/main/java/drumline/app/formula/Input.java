package drumline.app.formula;

import java.util.List;
import java.util.Optional;

/**
 * A value that a formula asks for.
 *
 * @param name key on the command line, e.g. {@code startDiameter}
 * @param measure what it measures
 * @param meaning what it is, in shop words
 * @param allowed range that the formula allows
 * @param need whether it must be given
 * @param standard value taken when nothing is given, as a person would write it; empty for none
 * @param choices words that are allowed, for {@link Measure#CHOICE}
 * @param usual range that practice or measurement knows; outside it the answer comes with a warning
 */
public record Input(
    String name,
    Measure measure,
    String meaning,
    Allowed allowed,
    Need need,
    String standard,
    List<String> choices,
    Optional<Usual> usual) {

  /** Whether an input must be given. */
  public enum Need {
    /** Must be given. */
    REQUIRED,
    /** Has a value of its own when it is not given. */
    STANDARD,
    /** May be left out; the formula then does without. */
    OPTIONAL,
    /** Must be given, and may be several values joined by colons. */
    SEVERAL
  }

  /**
   * A range that practice or measurement knows.
   *
   * @param range the range, in the formula's unit
   * @param consequence what to think of the answer outside it
   */
  public record Usual(Allowed range, String consequence) {}

  /** Copies the list. */
  public Input {
    choices = List.copyOf(choices);
  }

  /** The same with a usual range. */
  Input withUsual(Usual newUsual) {
    return new Input(
        name, measure, meaning, allowed, need, standard, choices, Optional.of(newUsual));
  }
}
