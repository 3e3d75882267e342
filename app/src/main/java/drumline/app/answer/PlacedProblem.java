package drumline.app.answer;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something wrong, with its place in the text.
 *
 * @param code name of the rule
 * @param severity error or warning
 * @param words found and allowed in one sentence
 * @param where place as a reader finds it
 * @param found what stands there
 * @param allowed what would be right
 * @param hint a sentence that begins with Maybe, or empty
 * @param line line from 1, or null
 * @param column column from 1, or null
 * @param path keys and indexes that lead there, or null
 * @param elementId element or feature of the part that it is about, or null
 */
public record PlacedProblem(
    String code,
    String severity,
    String words,
    String where,
    String found,
    String allowed,
    String hint,
    @Nullable Integer line,
    @Nullable Integer column,
    @Nullable List<Object> path,
    @Nullable String elementId) {}
