package drumline.app.desk;

import com.fasterxml.jackson.annotation.JsonProperty;
import drumline.app.answer.DeskRefusal;
import drumline.intake.edit.TextEdit;
import java.util.List;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/**
 * A wish to change a single value of a text.
 *
 * @param what set, add, remove or move
 * @param path keys and list indexes, from 0, that lead to the value
 * @param value a text, a list or a block of keys; null for remove and move
 * @param to place in the list, from 0; null for the end
 */
public record EditWish(
    @JsonProperty("do") String what,
    List<Object> path,
    @Nullable Object value,
    @Nullable Integer to) {

  /** Copies the list. */
  public EditWish {
    path = List.copyOf(path);
  }

  TextEdit edit() {
    return switch (what) {
      case "set" -> new TextEdit.Put(path, given("value", value));
      case "add" ->
          new TextEdit.Add(
              path, to == null ? OptionalInt.empty() : OptionalInt.of(to), given("value", value));
      case "remove" -> new TextEdit.Remove(path);
      case "move" -> new TextEdit.Move(path, given("to", to));
      default ->
          throw DeskRefusal.of(
              DeskRefusal.Kind.REFUSED, "do: " + what + ", allowed: set, add, remove, move");
    };
  }

  private static <T> T given(String name, @Nullable T value) {
    if (value == null) {
      throw DeskRefusal.of(
          DeskRefusal.Kind.REFUSED, name + ": nothing, allowed: what shall stand there");
    }
    return value;
  }
}
