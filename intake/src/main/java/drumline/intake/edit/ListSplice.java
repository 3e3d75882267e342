package drumline.intake.edit;

import java.util.ArrayList;
import java.util.List;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Adds, removes and moves elements of a list in a text. */
final class ListSplice {
  private final Composed at;
  private final String text;

  ListSplice(Composed at) {
    this.at = at;
    this.text = at.text();
  }

  /** A stretch of the text. */
  private record Stretch(int from, int to) {}

  String add(SequenceNode list, int index, Object value) {
    List<Node> items = list.getValue();
    String written = FlowText.of(value);
    if (Composed.isFlow(list)) {
      if (index == items.size()) {
        int end = at.end(items.get(index - 1));
        return with(end, end, ", " + written);
      }
      int start = at.start(items.get(index));
      return with(start, start, written + ", ");
    }
    String line = " ".repeat(Composed.column(list)) + "- " + written;
    if (index == items.size()) {
      int end = at.lineEnd(at.end(items.get(index - 1)));
      return with(end, end, "\n" + line);
    }
    int start = lines(list, index).from();
    return with(start, start, line + "\n");
  }

  String remove(SequenceNode list, int index) {
    List<Node> items = list.getValue();
    if (!Composed.isFlow(list)) {
      Stretch lines = lines(list, index);
      return with(lines.from(), Math.min(text.length(), lines.to() + 1), "");
    }
    return index == 0
        ? with(at.start(items.get(0)), at.start(items.get(1)), "")
        : with(at.end(items.get(index - 1)), at.end(items.get(index)), "");
  }

  /** Puts the elements' texts into another order; what stands between them stays where it is. */
  String move(SequenceNode list, int from, int to) {
    List<Stretch> stretches = new ArrayList<>();
    for (int i = 0; i < list.getValue().size(); i++) {
      Node item = list.getValue().get(i);
      stretches.add(
          Composed.isFlow(list) ? new Stretch(at.start(item), at.end(item)) : lines(list, i));
    }
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < stretches.size(); i++) {
      order.add(i);
    }
    order.add(to, order.remove(from));
    StringBuilder out = new StringBuilder(text.substring(0, stretches.get(0).from()));
    for (int i = 0; i < stretches.size(); i++) {
      Stretch moved = stretches.get(order.get(i));
      out.append(text, moved.from(), moved.to());
      int next = i + 1 < stretches.size() ? stretches.get(i + 1).from() : text.length();
      out.append(text, stretches.get(i).to(), next);
    }
    return out.toString();
  }

  /** Whole lines of an element with the comment above it, without the last line's break. */
  private Stretch lines(SequenceNode list, int index) {
    Node item = list.getValue().get(index);
    int dash = text.lastIndexOf('-', at.start(item) - 1);
    int line = at.lineStart(dash);
    if (!at.isBlank(line, dash)) {
      throw new IndexOutOfBoundsException("a list that begins within a line");
    }
    return new Stretch(at.withComments(line), at.lineEnd(at.end(item)));
  }

  private String with(int from, int to, String insert) {
    return text.substring(0, from) + insert + text.substring(to);
  }
}
