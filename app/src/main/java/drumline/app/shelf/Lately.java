package drumline.app.shelf;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/** What was made lately, by what it was made from; the one not used longest goes first. */
public final class Lately<K, V> {
  private final Map<K, V> kept;

  /**
   * An empty store.
   *
   * @param mostCount how many are kept
   */
  public Lately(int mostCount) {
    this.kept =
        new LinkedHashMap<>(16, 0.75f, true) {
          private static final long serialVersionUID = 1L;

          @Override
          protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
            return size() > mostCount;
          }
        };
  }

  /** The one made from this key; made now if it is not kept. Two may be made at the same time. */
  public V get(K key, Function<K, V> make) {
    synchronized (kept) {
      V known = kept.get(key);
      if (known != null) {
        return known;
      }
    }
    V made = make.apply(key);
    synchronized (kept) {
      kept.put(key, made);
    }
    return made;
  }
}
