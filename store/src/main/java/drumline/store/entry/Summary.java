package drumline.store.entry;

/**
 * What the list shows of an inquiry without planning it again.
 *
 * @param revision the revision that it was reckoned from
 * @param json a JSON object of the caller's, with its keys in alphabetical order
 */
public record Summary(int revision, String json) {}
