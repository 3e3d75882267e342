package drumline.intake.edit;

import drumline.intake.text.Node;
import drumline.intake.text.YamlText;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A text as plain maps, lists and texts; every single value is the text as written, empty where
 * nothing stands.
 */
public final class PlainTree {
  private PlainTree() {}

  /** The text as a map; empty where it is not YAML, or no block of keys. */
  public static Optional<Map<String, Object>> of(String text) {
    return YamlText.read(text, "text", new ArrayList<>()).map(PlainTree::map);
  }

  private static Map<String, Object> map(Node.Keyed keyed) {
    Map<String, Object> map = new LinkedHashMap<>();
    keyed.entries().forEach(entry -> map.put(entry.key(), plain(entry.value())));
    return map;
  }

  private static Object plain(Node node) {
    if (node instanceof Node.Keyed keyed) {
      return map(keyed);
    }
    if (node instanceof Node.Listing listing) {
      List<Object> list = new ArrayList<>();
      listing.items().forEach(item -> list.add(plain(item)));
      return list;
    }
    return ((Node.Single) node).text();
  }
}
