package drumline.intake.edit;

import java.util.List;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.CollectionNode;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** A text with its nodes and where they stand, counted in characters of Java text. */
final class Composed {
  private final String text;
  private final Node top;

  Composed(String text) {
    this.text = text;
    LoadSettings settings = LoadSettings.builder().setUseMarks(true).build();
    this.top =
        new Compose(settings)
            .composeString(text)
            .orElseThrow(() -> new IndexOutOfBoundsException("an empty text"));
  }

  String text() {
    return text;
  }

  Node top() {
    return top;
  }

  static boolean isFlow(Node node) {
    return node instanceof CollectionNode<?> all && all.getFlowStyle() == FlowStyle.FLOW;
  }

  static boolean isNothing(Node node) {
    return node instanceof ScalarNode scalar && scalar.getValue().isEmpty() && scalar.isPlain();
  }

  /** The tuple of a key. */
  static NodeTuple find(MappingNode mapping, String key) {
    for (NodeTuple tuple : mapping.getValue()) {
      if (tuple.getKeyNode() instanceof ScalarNode scalar && scalar.getValue().equals(key)) {
        return tuple;
      }
    }
    throw new IndexOutOfBoundsException("no key " + key);
  }

  static boolean has(MappingNode mapping, String key) {
    return mapping.getValue().stream()
        .anyMatch(t -> t.getKeyNode() instanceof ScalarNode s && s.getValue().equals(key));
  }

  /** The value that a step leads to. */
  static Node step(Node from, Object step) {
    if (from instanceof MappingNode mapping && step instanceof String key) {
      return find(mapping, key).getValueNode();
    }
    if (from instanceof SequenceNode sequence && step instanceof Integer i) {
      return sequence.getValue().get(i);
    }
    throw new IndexOutOfBoundsException("no step " + step);
  }

  int start(Node node) {
    return index(node.getStartMark().orElseThrow(IndexOutOfBoundsException::new));
  }

  static int column(Node node) {
    return node.getStartMark().orElseThrow(IndexOutOfBoundsException::new).getColumn();
  }

  /** Where the last thing of a node ends; comments and blank lines behind it do not count. */
  int end(Node node) {
    if (node instanceof MappingNode mapping && !isFlow(node) && !mapping.getValue().isEmpty()) {
      List<NodeTuple> tuples = mapping.getValue();
      return end(tuples.get(tuples.size() - 1).getValueNode());
    }
    if (node instanceof SequenceNode sequence && !isFlow(node) && !sequence.getValue().isEmpty()) {
      List<Node> items = sequence.getValue();
      return end(items.get(items.size() - 1));
    }
    int end = index(node.getEndMark().orElseThrow(IndexOutOfBoundsException::new));
    boolean isBlockScalar = node instanceof ScalarNode s && !s.isPlain() && endsInNewLine(end);
    return isBlockScalar ? end - 1 : end;
  }

  private boolean endsInNewLine(int end) {
    return end > 0 && text.charAt(end - 1) == '\n';
  }

  private int index(Mark mark) {
    return text.offsetByCodePoints(0, mark.getIndex());
  }

  /** Place behind the colon of a key. */
  int behindColon(Node key) {
    int i = end(key);
    while (text.charAt(i) != ':') {
      i++;
    }
    return i + 1;
  }

  int lineStart(int at) {
    return text.lastIndexOf('\n', at - 1) + 1;
  }

  /** Place of the line break that ends a line, or the end of the text. */
  int lineEnd(int at) {
    int end = text.indexOf('\n', at);
    return end < 0 ? text.length() : end;
  }

  /** Start of a line with the comment lines right above it. */
  int withComments(int lineStart) {
    int start = lineStart;
    while (start > 0) {
      int above = lineStart(start - 1);
      if (!text.substring(above, start - 1).stripLeading().startsWith("#")) {
        return start;
      }
      start = above;
    }
    return start;
  }

  boolean isBlank(int from, int to) {
    return text.substring(from, to).isBlank();
  }
}
