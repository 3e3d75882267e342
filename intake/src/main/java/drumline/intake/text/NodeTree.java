package drumline.intake.text;

import drumline.shop.problem.Problem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Turns the YAML library's nodes into ours, following references within bounds. */
final class NodeTree {

  /** Most values that a file may hold once its references are written out. */
  private static final int MOST_COUNT = 100_000;

  private static final Set<String> USUAL_TAGS =
      Set.of("str", "int", "float", "bool", "null", "seq", "map");

  private final String file;
  private final List<Problem> problems;
  private final Set<Object> open = Collections.newSetFromMap(new IdentityHashMap<>());
  private int count;

  NodeTree(String file, List<Problem> problems) {
    this.file = file;
    this.problems = problems;
  }

  /** The tree below a node, or empty where references make it endless or too large. */
  Optional<Node> convert(org.snakeyaml.engine.v2.nodes.Node node) {
    Node converted = node(node);
    return count > MOST_COUNT ? Optional.empty() : Optional.of(converted);
  }

  private Node node(org.snakeyaml.engine.v2.nodes.Node node) {
    Place place = place(node);
    count++;
    if (count > MOST_COUNT) {
      if (count == MOST_COUNT + 1) {
        add("too-many-values", place, "more than " + MOST_COUNT + " values", "fewer values");
      }
      return new Node.Single("", place);
    }
    if (!open.add(node)) {
      add("endless-reference", place, "a reference to the block it stands in", "no loops");
      return new Node.Single("", place);
    }
    String tag = node.getTag().getValue();
    if (!USUAL_TAGS.contains(tag.replaceFirst("^tag:yaml\\.org,2002:", ""))) {
      add("tag-unknown", place, "the tag \"" + tag + "\"", "values without tags");
    }
    Node converted = shaped(node, place);
    open.remove(node);
    return converted;
  }

  private Node shaped(org.snakeyaml.engine.v2.nodes.Node node, Place place) {
    if (node instanceof MappingNode mapping) {
      return keyed(mapping, place);
    }
    if (node instanceof SequenceNode sequence) {
      return new Node.Listing(sequence.getValue().stream().map(this::node).toList(), place);
    }
    String text = ((ScalarNode) node).getValue();
    boolean nothing =
        ((ScalarNode) node).isPlain()
            && (text.isEmpty() || text.equals("~") || text.equals("null"));
    return new Node.Single(nothing ? "" : text, place);
  }

  private Node keyed(MappingNode mapping, Place place) {
    Map<String, Place> seen = new LinkedHashMap<>();
    List<Node.Entry> entries = new ArrayList<>();
    for (NodeTuple tuple : mapping.getValue()) {
      Place keyPlace = place(tuple.getKeyNode());
      if (!(tuple.getKeyNode() instanceof ScalarNode key)) {
        add("key-not-text", keyPlace, "a list or block as key", "a word as key");
        continue;
      }
      Place first = seen.putIfAbsent(key.getValue(), keyPlace);
      if (first != null) {
        add(
            "key-twice",
            keyPlace,
            "the key \"" + key.getValue() + "\" a second time, first in line " + first.line(),
            "each key once");
        continue;
      }
      entries.add(new Node.Entry(key.getValue(), keyPlace, node(tuple.getValueNode())));
    }
    return new Node.Keyed(entries, place);
  }

  private Place place(org.snakeyaml.engine.v2.nodes.Node node) {
    return node.getStartMark()
        .map(mark -> YamlText.place(file, mark))
        .orElse(new Place(file, 1, 1));
  }

  private void add(String code, Place place, String found, String allowed) {
    problems.add(Problem.error(code, place.toText(), found, allowed, ""));
  }
}
