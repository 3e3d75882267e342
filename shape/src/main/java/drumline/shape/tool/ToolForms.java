package drumline.shape.tool;

import drumline.shop.tooling.ToolKind;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Usual forms of tools that a tool list does not state: inserts, shanks, noses of holders.
 *
 * <p>Source: tool-forms.csv and holder-noses.csv beside this class; [ISO-15488] nut diameters, all
 * from memory. Known limit: a real tool's own drawing takes their place before anything is set up.
 */
final class ToolForms {

  private static final Map<ToolKind, Form> FORMS = forms();
  private static final List<Nose> NOSES = noses();

  private ToolForms() {}

  /**
   * Usual form of a kind of tool.
   *
   * @param includedDeg included angle of the insert (EPSR)
   * @param edgeMm length of the insert's edge (L)
   * @param shankMm height of the shank (H), or diameter of a round one where that is fixed
   * @param leastReachMm how far such a tool can always stand out
   */
  record Form(double includedDeg, double edgeMm, double shankMm, double leastReachMm) {}

  private record Nose(double shankMm, double noseMm) {}

  static Form of(ToolKind kind) {
    Form form = FORMS.get(kind);
    if (form == null) {
      throw new IllegalStateException("tool-forms.csv has no line for " + kind);
    }
    return form;
  }

  /** Diameter in mm of the collet nut that holds a shank of a diameter in mm. */
  static double noseMm(double shankMm) {
    return NOSES.stream()
        .filter(nose -> nose.shankMm >= shankMm)
        .findFirst()
        .map(Nose::noseMm)
        .orElse(2 * shankMm);
  }

  private static Map<ToolKind, Form> forms() {
    Map<ToolKind, Form> forms = new EnumMap<>(ToolKind.class);
    for (List<String> cells : lines("tool-forms.csv")) {
      forms.put(
          ToolKind.valueOf(cells.get(0)),
          new Form(number(cells, 1), number(cells, 2), number(cells, 3), number(cells, 4)));
    }
    return forms;
  }

  private static List<Nose> noses() {
    return lines("holder-noses.csv").stream()
        .map(cells -> new Nose(number(cells, 0), number(cells, 1)))
        .toList();
  }

  private static double number(List<String> cells, int column) {
    return Double.parseDouble(cells.get(column));
  }

  private static List<List<String>> lines(String name) {
    try (InputStream in = ToolForms.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("resource " + name + " is not in the program");
      }
      List<List<String>> lines = new ArrayList<>();
      new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#"))
          .forEach(line -> lines.add(List.of(line.split(",", -1))));
      return lines;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
