package drumline.step.exchange;

import java.util.List;

/** A value of an instance as it stands in the file. */
public sealed interface StepValue {

  /** A whole or decimal number. */
  record Figure(double value) implements StepValue {}

  /** A string with its escapes resolved. */
  record Text(String text) implements StepValue {}

  /** A binary literal, its hexadecimal digits. */
  record Bits(String digits) implements StepValue {}

  /** A word between full stops, such as {@code .T.} */
  record Word(String word) implements StepValue {}

  /** Another instance, such as {@code #12}. */
  record Ref(int id) implements StepValue {}

  /** A name of edition 3 for a value or for something outside the file. */
  record Named(String name) implements StepValue {}

  /** A list in parentheses. */
  record Items(List<StepValue> values) implements StepValue {
    /** Copies the list. */
    public Items {
      values = List.copyOf(values);
    }
  }

  /** A value with the name of its type, such as {@code LENGTH_MEASURE(25.4)}. */
  record Typed(String type, List<StepValue> values) implements StepValue {
    /** Copies the list. */
    public Typed {
      values = List.copyOf(values);
    }
  }

  /** A value that is left out or derived. */
  enum Absent implements StepValue {
    /** Not given, {@code $}. */
    OMITTED,
    /** Derived in a subtype, {@code *}. */
    DERIVED
  }
}
