package drumline.app.answer.layout;

/**
 * A stretch of a tool's time.
 *
 * @param kind approach, cut, dwell or retract
 * @param startS begin
 * @param endS end
 */
public record Span(String kind, double startS, double endS) {}
