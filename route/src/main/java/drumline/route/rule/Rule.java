package drumline.route.rule;

/**
 * A rule of the process, as a reader can check it.
 *
 * @param id short name that a study refers to
 * @param text the rule in plain words
 * @param source where it comes from, or "common practice"
 */
public record Rule(String id, String text, String source) {}
