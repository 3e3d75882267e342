package drumline.intake.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The same edits on a plain tree: what a text must read as once it was edited. */
final class PlainEdit {
  private final Map<String, Object> top;

  PlainEdit(Map<String, Object> top) {
    this.top = top;
  }

  void apply(TextEdit edit) throws RefusedEditException {
    List<Object> path = edit.path();
    if (edit instanceof TextEdit.Add add) {
      List<Object> list = list(path, Missing.MADE);
      list.add(index(path, add.toIndex().orElse(list.size()), list.size()), copy(add.value()));
      return;
    }
    if (path.isEmpty()) {
      throw refused(path, "an empty path", "a path to a value");
    }
    Object last = path.get(path.size() - 1);
    List<Object> way = path.subList(0, path.size() - 1);
    if (edit instanceof TextEdit.Put put) {
      put(way, last, put.value());
    } else if (edit instanceof TextEdit.Move move) {
      List<Object> list = list(way, Missing.REFUSED);
      Object moved = list.remove(place(path, last, list));
      list.add(index(path, move.toIndex(), list.size()), moved);
    } else if (last instanceof String key) {
      Map<String, Object> map = map(way, Missing.REFUSED);
      if (!map.containsKey(key)) {
        throw refused(path, "no key \"" + key + "\"", String.join(", ", map.keySet()));
      }
      map.remove(key);
    } else {
      List<Object> list = list(way, Missing.REFUSED);
      list.remove(place(path, last, list));
    }
  }

  private enum Missing {
    MADE,
    REFUSED
  }

  private void put(List<Object> way, Object last, Object value) throws RefusedEditException {
    if (last instanceof String key) {
      map(way, Missing.MADE).put(key, copy(value));
    } else {
      List<Object> list = list(way, Missing.REFUSED);
      list.set(place(way, last, list), copy(value));
    }
  }

  /** The value at a path; empty text where a key is not there. */
  private Object find(List<Object> path) throws RefusedEditException {
    Object here = top;
    for (Object step : path) {
      if (here instanceof Map<?, ?> map && step instanceof String) {
        Object next = map.get(step);
        here = next == null ? "" : next;
      } else if (here instanceof List<?> list && step instanceof Integer i && isIn(i, list)) {
        here = list.get(i);
      } else {
        throw refused(path, "nothing that " + step + " leads to", "keys and indexes of the text");
      }
    }
    return here;
  }

  @SuppressWarnings("unchecked")
  private Map<String, Object> map(List<Object> path, Missing missing) throws RefusedEditException {
    Object here = find(path);
    if (here instanceof Map<?, ?> map) {
      return (Map<String, Object>) map;
    }
    if (missing == Missing.MADE && here.equals("") && !path.isEmpty()) {
      Map<String, Object> made = new LinkedHashMap<>();
      hold(path, made);
      return made;
    }
    throw refused(path, "no block of keys", "a path that leads to a block of keys");
  }

  @SuppressWarnings("unchecked")
  private List<Object> list(List<Object> path, Missing missing) throws RefusedEditException {
    Object here = find(path);
    if (here instanceof List<?> list) {
      return (List<Object>) list;
    }
    if (missing == Missing.MADE && here.equals("") && !path.isEmpty()) {
      List<Object> made = new ArrayList<>();
      hold(path, made);
      return made;
    }
    throw refused(path, "no list", "a path that leads to a list");
  }

  private void hold(List<Object> path, Object made) throws RefusedEditException {
    Object last = path.get(path.size() - 1);
    List<Object> way = path.subList(0, path.size() - 1);
    if (last instanceof String key) {
      map(way, Missing.MADE).put(key, made);
    } else {
      List<Object> list = list(way, Missing.REFUSED);
      list.set(place(path, last, list), made);
    }
  }

  private static boolean isIn(int i, List<?> list) {
    return i >= 0 && i < list.size();
  }

  private static int place(List<Object> path, Object last, List<Object> list)
      throws RefusedEditException {
    if (last instanceof Integer i && isIn(i, list)) {
      return i;
    }
    throw refused(path, "no element " + last, "0 to " + (list.size() - 1));
  }

  private static int index(List<Object> path, int i, int most) throws RefusedEditException {
    if (i < 0 || i > most) {
      throw refused(path, "place " + i, "0 to " + most);
    }
    return i;
  }

  static Object copy(Object value) throws RefusedEditException {
    if (value instanceof Map<?, ?> map) {
      Map<String, Object> copy = new LinkedHashMap<>();
      for (Map.Entry<?, ?> entry : map.entrySet()) {
        copy.put(String.valueOf(entry.getKey()), copy(entry.getValue()));
      }
      return copy;
    }
    if (value instanceof List<?> list) {
      List<Object> copy = new ArrayList<>();
      for (Object element : list) {
        copy.add(copy(element));
      }
      return copy;
    }
    if (value instanceof String text) {
      return text;
    }
    throw new RefusedEditException(
        "value-kind", "value", String.valueOf(value), "a text, a list or a block of keys");
  }

  private static RefusedEditException refused(List<Object> path, String found, String allowed) {
    return new RefusedEditException("path", "path " + path, found, allowed);
  }
}
