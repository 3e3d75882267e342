package drumline.step.exchange;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/** Where each instance begins, and which instances each entity has; a few bytes for each. */
final class InstanceIndex {
  private static final long LOW = 0xFFFFFFFFL;

  private long[] places = new long[1024];
  private int count;
  private final Map<String, int[]> idsByName = new HashMap<>();

  void add(int id, int offset) {
    if (count == places.length) {
      places = Arrays.copyOf(places, 2 * count);
    }
    places[count++] = (long) id << 32 | offset;
  }

  /** Notes that an instance has an entity; the first element of each array is its length. */
  void name(String name, int id) {
    int[] ids = idsByName.computeIfAbsent(name, n -> new int[4]);
    if (ids[0] + 1 == ids.length) {
      ids = Arrays.copyOf(ids, 2 * ids.length);
      idsByName.put(name, ids);
    }
    ids[++ids[0]] = id;
  }

  /** Sorts; gives the offset of an instance whose number was there before, or -1. */
  int close() {
    places = Arrays.copyOf(places, count);
    Arrays.sort(places);
    for (int i = 1; i < count; i++) {
      if (places[i] >> 32 == places[i - 1] >> 32) {
        return (int) (places[i] & LOW);
      }
    }
    return -1;
  }

  int size() {
    return count;
  }

  /** Offset behind the equals sign, or -1. */
  int offset(int id) {
    int found = Arrays.binarySearch(places, (long) id << 32);
    int i = found >= 0 ? found : -found - 1;
    return i < count && places[i] >> 32 == id ? (int) (places[i] & LOW) : -1;
  }

  int[] ids(String name) {
    int[] ids = idsByName.get(name);
    return ids == null ? new int[0] : Arrays.copyOfRange(ids, 1, ids[0] + 1);
  }
}
