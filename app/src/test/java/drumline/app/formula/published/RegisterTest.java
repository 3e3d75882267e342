package drumline.app.formula.published;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.shop.quantity.FigureTable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every worked example of the register stands as a row in a data file that a test reads. */
class RegisterTest {

  static List<FigureTable.Row> rows() {
    return FigureTable.read(RegisterTest.class, "register.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void exampleStandsInItsFile(FigureTable.Row row) throws IOException {
    Path file = Path.of("..").resolve(row.text("file"));
    String start = row.text("row");
    assertThat(Files.readAllLines(file))
        .as("%s in %s", row.text("id"), row.text("file"))
        .anyMatch(line -> line.startsWith(start));
  }

  @Test
  void everyPublishedOneOfTheRegisterIsListed() {
    Set<String> ids = new TreeSet<>();
    rows().forEach(row -> ids.add(row.text("id")));
    assertThat(ids)
        .contains(
            "K1", "K5", "D1", "D2", "G1", "B1", "B3", "W1", "W2", "W3", "F4b", "F5", "E3", "P1");
  }
}
