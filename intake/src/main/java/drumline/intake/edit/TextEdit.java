package drumline.intake.edit;

import java.util.List;
import java.util.OptionalInt;

/**
 * One change of a text. A path leads to a value by keys (text) and list indexes (whole numbers from
 * 0). A value is what would stand in the file: a text, a list of values, or a map from keys to
 * values.
 */
public sealed interface TextEdit {

  /** Way to the value. */
  List<Object> path();

  /**
   * Another value.
   *
   * @param path way to it; its last key may be new
   * @param value what stands there afterwards
   */
  record Put(List<Object> path, Object value) implements TextEdit {
    /** Copies the path. */
    public Put {
      path = List.copyOf(path);
    }
  }

  /**
   * One more element of a list.
   *
   * @param path way to the list; made if it is not there
   * @param toIndex its place from 0; empty for the end
   * @param value the element
   */
  record Add(List<Object> path, OptionalInt toIndex, Object value) implements TextEdit {
    /** Copies the path. */
    public Add {
      path = List.copyOf(path);
    }
  }

  /**
   * A key or element less.
   *
   * @param path way to it
   */
  record Remove(List<Object> path) implements TextEdit {
    /** Copies the path. */
    public Remove {
      path = List.copyOf(path);
    }
  }

  /**
   * An element at another place of its list.
   *
   * @param path way to it
   * @param toIndex its place afterwards, from 0
   */
  record Move(List<Object> path, int toIndex) implements TextEdit {
    /** Copies the path. */
    public Move {
      path = List.copyOf(path);
    }
  }
}
