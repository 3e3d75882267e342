package drumline.intake.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Cuts one edit into a text. */
final class Splice {
  private final Composed at;
  private final String text;
  private final ListSplice lists;

  Splice(String text) {
    this.text = text;
    this.at = new Composed(text);
    this.lists = new ListSplice(at);
  }

  String apply(TextEdit edit) {
    List<Object> path = edit.path();
    if (edit instanceof TextEdit.Add add) {
      return add(path, add);
    }
    Object last = path.get(path.size() - 1);
    List<Object> way = path.subList(0, path.size() - 1);
    if (edit instanceof TextEdit.Put put) {
      return put(path, put.value());
    }
    Node holder = node(way);
    if (edit instanceof TextEdit.Move move) {
      return lists.move((SequenceNode) holder, (Integer) last, move.toIndex());
    }
    boolean isOnly =
        holder instanceof MappingNode m
            ? m.getValue().size() == 1
            : ((SequenceNode) holder).getValue().size() == 1;
    if (isOnly) {
      return replaced(way, holder instanceof MappingNode ? Map.of() : List.of());
    }
    return holder instanceof SequenceNode sequence
        ? lists.remove(sequence, (Integer) last)
        : removed((MappingNode) holder, (String) last);
  }

  private Node node(List<Object> path) {
    Node here = at.top();
    for (Object step : path) {
      here = Composed.step(here, step);
    }
    return here;
  }

  /** How many steps of the path lead to something that can hold more. */
  private int known(List<Object> path) {
    Node here = at.top();
    for (int i = 0; i < path.size(); i++) {
      boolean goesOn =
          here instanceof SequenceNode
              || (here instanceof MappingNode m && Composed.has(m, (String) path.get(i)));
      if (!goesOn) {
        return i;
      }
      here = Composed.step(here, path.get(i));
      if (Composed.isNothing(here) && i + 1 < path.size()) {
        return i + 1;
      }
    }
    return path.size();
  }

  private String add(List<Object> path, TextEdit.Add add) {
    int known = known(path);
    if (known == path.size() && node(path) instanceof SequenceNode sequence) {
      if (!sequence.getValue().isEmpty()) {
        return lists.add(sequence, add.toIndex().orElse(sequence.getValue().size()), add.value());
      }
      return replaced(path, List.of(add.value()));
    }
    return put(path, List.of(add.value()));
  }

  private String put(List<Object> path, Object value) {
    int known = known(path);
    Object inner = value;
    for (int i = path.size() - 1; i > known; i--) {
      Map<String, Object> wrapped = new LinkedHashMap<>();
      wrapped.put((String) path.get(i), inner);
      inner = wrapped;
    }
    if (known == path.size()) {
      return replaced(path, inner);
    }
    Node holder = node(path.subList(0, known));
    String key = (String) path.get(known);
    if (holder instanceof MappingNode mapping && !mapping.getValue().isEmpty()) {
      return inserted(mapping, key, inner);
    }
    Map<String, Object> made = new LinkedHashMap<>();
    made.put(key, inner);
    return replaced(path.subList(0, known), made);
  }

  /** The text with another value at a path that is there. */
  private String replaced(List<Object> path, Object value) {
    Node old = node(path);
    Object last = path.get(path.size() - 1);
    Node holder = node(path.subList(0, path.size() - 1));
    int end = at.end(old);
    if (holder instanceof MappingNode mapping && !Composed.isFlow(holder)) {
      Node key = Composed.find(mapping, (String) last).getKeyNode();
      String written = FlowText.behindKey(value, Composed.column(key));
      int colon = at.behindColon(key);
      boolean isBehindKey = !text.substring(colon, at.start(old)).contains("\n");
      int start = isBehindKey && !written.startsWith("\n") ? at.start(old) : colon;
      String space = start == colon ? written : written.stripLeading();
      return spliced(start, Math.max(start, end), space);
    }
    String written = FlowText.of(value);
    return spliced(
        at.start(old),
        Math.max(at.start(old), end),
        at.start(old) == end ? " " + written : written);
  }

  private String inserted(MappingNode mapping, String key, Object value) {
    List<NodeTuple> tuples = mapping.getValue();
    int end = at.end(tuples.get(tuples.size() - 1).getValueNode());
    if (Composed.isFlow(mapping)) {
      return spliced(end, end, ", " + FlowText.single(key) + ": " + FlowText.of(value));
    }
    int column = Composed.column(tuples.get(0).getKeyNode());
    int line = at.lineEnd(end);
    String entry =
        "\n" + " ".repeat(column) + FlowText.single(key) + ":" + FlowText.behindKey(value, column);
    return spliced(line, line, entry);
  }

  private String removed(MappingNode mapping, String key) {
    List<NodeTuple> tuples = mapping.getValue();
    int i = tuples.indexOf(Composed.find(mapping, key));
    Node keyNode = tuples.get(i).getKeyNode();
    int start = at.start(keyNode);
    int end = at.end(tuples.get(i).getValueNode());
    if (Composed.isFlow(mapping)) {
      return i == 0
          ? spliced(start, at.start(tuples.get(1).getKeyNode()), "")
          : spliced(at.end(tuples.get(i - 1).getValueNode()), end, "");
    }
    int line = at.lineStart(start);
    if (at.isBlank(line, start)) {
      return spliced(at.withComments(line), Math.min(text.length(), at.lineEnd(end) + 1), "");
    }
    return spliced(start, at.start(tuples.get(i + 1).getKeyNode()), "");
  }

  private String spliced(int from, int to, String with) {
    List<String> parts =
        new ArrayList<>(List.of(text.substring(0, from), with, text.substring(to)));
    return String.join("", parts);
  }
}
