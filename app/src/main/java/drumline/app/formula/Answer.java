package drumline.app.formula;

import drumline.cutting.validity.Validity;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * What a formula answers.
 *
 * @param steps figures on the way, in the order they are reckoned
 * @param results what was asked for, the most wanted first
 * @param notes ranges of the formula that the values left
 */
public record Answer(List<Line> steps, List<Line> results, Validity notes) {

  /** No figures yet. */
  public static final Answer NONE = new Answer(List.of(), List.of(), Validity.inside());

  /**
   * One figure.
   *
   * @param words what it is
   * @param measure what it measures
   * @param value Double in the measure's unit, Integer, BigDecimal or text
   */
  public record Line(String words, Measure measure, Object value) {}

  /** Copies the lists. */
  public Answer {
    steps = List.copyOf(steps);
    results = List.copyOf(results);
  }

  /** The answer of one figure. */
  public static Answer of(String words, Measure measure, double value) {
    return NONE.result(words, measure, value);
  }

  /** The same with a further figure on the way. */
  public Answer step(String words, Measure measure, double value) {
    return new Answer(with(steps, new Line(words, measure, value)), results, notes);
  }

  /** The same with a figure asked for. */
  public Answer result(String words, Measure measure, double value) {
    return new Answer(steps, with(results, new Line(words, measure, value)), notes);
  }

  /** The same with an amount asked for. */
  public Answer result(String words, Measure measure, BigDecimal value) {
    return new Answer(steps, with(results, new Line(words, measure, value)), notes);
  }

  /** The same with a sentence or a word asked for. */
  public Answer result(String words, String value) {
    return new Answer(steps, with(results, new Line(words, Measure.TEXT, value)), notes);
  }

  /** The same with a word on the way. */
  public Answer step(String words, String value) {
    return new Answer(with(steps, new Line(words, Measure.TEXT, value)), results, notes);
  }

  /** The same with further notes. */
  public Answer noting(Validity further) {
    return new Answer(steps, results, notes.and(further));
  }

  private static List<Line> with(List<Line> lines, Line line) {
    List<Line> all = new ArrayList<>(lines);
    all.add(line);
    return all;
  }
}
