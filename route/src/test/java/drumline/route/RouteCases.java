package drumline.route;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** The pieces of routes.txt with the operations expected. */
public final class RouteCases {
  private RouteCases() {}

  /** A piece and what is expected: kinds of operations in one line. */
  public record Case(String name, Asked asked, String expected) {
    @Override
    public String toString() {
      return name;
    }
  }

  /** All cases of the file. */
  public static List<Case> all() {
    List<Case> cases = new ArrayList<>();
    for (String block : text().split("\n== ", -1)) {
      int arrow = block.indexOf("\n-> ");
      if (arrow > 0) {
        cases.add(one(block.substring(0, arrow), block.substring(arrow + 4).strip()));
      }
    }
    return cases;
  }

  private static Case one(String block, String expected) {
    int end = block.indexOf('\n');
    String[] head = block.substring(0, end).split("\\|", -1);
    Asked asked =
        Asked.piece(block.substring(end + 1)).in(head[1].strip()).from(bar(head[2].strip()));
    return new Case(head[0].strip(), asked, expected);
  }

  private static String bar(String words) {
    String[] cells = words.split(" ", -1);
    String shape = cells[0].equals("tube") ? "round" : cells[0];
    String bore = cells.length > 2 ? ", bore: " + cells[2] + " mm" : "";
    return "{shape: "
        + shape
        + ", size: "
        + cells[1]
        + " mm"
        + bore
        + ", tolerance: h11, length: 3 m}";
  }

  private static String text() {
    try (InputStream in = RouteCases.class.getResourceAsStream("routes.txt")) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
