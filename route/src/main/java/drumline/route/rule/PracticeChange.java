package drumline.route.rule;

/**
 * A rule or figure of the process that the user does otherwise.
 *
 * @param what the rule or figure
 * @param was what ships
 * @param now what is used, with the user's reason
 * @param where file, line and column
 */
public record PracticeChange(String what, String was, String now, String where) {}
