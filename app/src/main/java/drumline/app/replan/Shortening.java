package drumline.app.replan;

/**
 * A change that would shorten the cycle.
 *
 * @param words the change in shop words
 * @param gainS seconds that the cycle would be shorter, as planning again found
 */
public record Shortening(String words, double gainS) {}
