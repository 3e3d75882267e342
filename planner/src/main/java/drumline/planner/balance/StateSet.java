package drumline.planner.balance;

import java.util.Arrays;

/** Remembers sets of tasks with the fewest stations that held them. */
final class StateSet {
  private long[][] keys = new long[1 << 12][];
  private int[] stations = new int[1 << 12];
  private int count;

  /** False if the set was seen with no more stations. */
  boolean addIfBetter(long[] key, int stationCount) {
    if (count * 2 > keys.length) {
      grow();
    }
    int slot = slot(keys, key);
    if (keys[slot] == null) {
      keys[slot] = key;
      stations[slot] = stationCount;
      count++;
      return true;
    }
    if (stations[slot] <= stationCount) {
      return false;
    }
    stations[slot] = stationCount;
    return true;
  }

  private static int slot(long[][] table, long[] key) {
    long hash = 0;
    for (long word : key) {
      hash = (hash ^ word) * 0x9E3779B97F4A7C15L;
      hash ^= hash >>> 29;
    }
    int slot = (int) (hash >>> 20) & (table.length - 1);
    while (table[slot] != null && !Arrays.equals(table[slot], key)) {
      slot = (slot + 1) & (table.length - 1);
    }
    return slot;
  }

  private void grow() {
    long[][] oldKeys = keys;
    int[] oldStations = stations;
    keys = new long[oldKeys.length * 2][];
    stations = new int[oldKeys.length * 2];
    for (int s = 0; s < oldKeys.length; s++) {
      if (oldKeys[s] != null) {
        int slot = slot(keys, oldKeys[s]);
        keys[slot] = oldKeys[s];
        stations[slot] = oldStations[s];
      }
    }
  }

  /** Sets remembered. */
  int size() {
    return count;
  }
}
