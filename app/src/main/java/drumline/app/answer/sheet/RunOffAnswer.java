package drumline.app.answer.sheet;

/**
 * What there is of a run-off.
 *
 * @param revision revision of the inquiry that it belongs to
 * @param state missing
 * @param words the same as a sentence
 */
public record RunOffAnswer(int revision, String state, String words) {}
