package drumline.intake.text;

import drumline.shop.problem.Problem;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** What the YAML library finds wrong with a text, in our words. */
final class YamlFault {

  private static final String ALLOWED = "a text in YAML form";

  private YamlFault() {}

  static Problem problem(YamlEngineException fault, String text, String file) {
    if (fault instanceof MarkedYamlEngineException marked && marked.getProblemMark().isPresent()) {
      Place place = YamlText.place(file, marked.getProblemMark().get());
      String line = text.lines().skip(place.line() - 1L).findFirst().orElse("");
      return line.strip().isEmpty() || !line.contains("\t")
          ? broken(marked, place, line)
          : tab(place);
    }
    if (fault instanceof ReaderException reader) {
      long before = text.codePoints().limit(reader.getPosition()).filter(c -> c == '\n').count();
      String found = String.format("the invisible character U+%04X", reader.getCodePoint());
      return Problem.error(
          "character-unknown", file + ":" + (before + 1), found, "printable characters", "");
    }
    return Problem.error("not-yaml", file, "a text that cannot be read", ALLOWED, "");
  }

  private static Problem tab(Place place) {
    return Problem.error(
        "tab", place.toText(), "a tab", "blanks to indent", "Maybe two blanks for each level.");
  }

  private static Problem broken(MarkedYamlEngineException marked, Place place, String line) {
    String context = marked.getContext() == null ? "" : marked.getContext() + ": ";
    String shown = line.isBlank() ? "" : " at \"" + line.strip() + "\"";
    return Problem.error(
        "not-yaml", place.toText(), context + marked.getProblem() + shown, ALLOWED, hint(marked));
  }

  private static String hint(MarkedYamlEngineException marked) {
    String problem = String.valueOf(marked.getProblem());
    if (problem.contains("mapping values are not allowed")) {
      return "Maybe the text before the second colon belongs in quotation marks.";
    }
    if (problem.contains("block end")) {
      return "Maybe a line is indented differently from its neighbours.";
    }
    return "";
  }
}
