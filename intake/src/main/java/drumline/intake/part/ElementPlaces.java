package drumline.intake.part;

import drumline.intake.form.Block;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Where each element and feature of the part stands in the file, by its id. */
public final class ElementPlaces {

  private final Map<String, String> whereById = new HashMap<>();

  /** The id of a block, or one made up; a problem where another element has it already. */
  String id(Block block, String otherwise) {
    String id = block.text("id", otherwise);
    String earlier = whereById.putIfAbsent(id, block.where());
    if (earlier != null) {
      block.report(
          "id-twice",
          "the id \"" + id + "\" a second time",
          "each id once in the part; first at " + earlier,
          "");
    }
    return id;
  }

  /** Notes where something without an id stands. */
  void note(String name, String where) {
    whereById.putIfAbsent(name, where);
  }

  /** Where an element stands, if there is one with this id. */
  public Optional<String> find(String id) {
    return Optional.ofNullable(whereById.get(id));
  }

  /** A copy for later look-ups: file, line, column and key path by element id. */
  public Map<String, String> toMap() {
    return Map.copyOf(whereById);
  }
}
