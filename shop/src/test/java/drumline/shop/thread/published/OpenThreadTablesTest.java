package drumline.shop.thread.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import drumline.shop.thread.ThreadCatalogue;
import drumline.shop.thread.ThreadSize;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Compares limits with {@code shared/data/tolerances/threads.json}: public transcriptions of
 * [ISO-965-2], [ASME-B1.1] and [ISO-228-1], each with its status in the file.
 */
class OpenThreadTablesTest {

  private static final double IN_MM = 25.4;

  @Test
  void metricLimitsAgree() throws IOException {
    int compared = 0;
    for (String row : rows("metric")) {
      ThreadSize thread = ThreadCatalogue.find(word(row, "name")).orElseThrow();
      var external = thread.external().orElseThrow();
      var internal = thread.internal().orElseThrow();
      assertAgree(row, "dMax", external.majorMaxMm(), 1e-9);
      assertAgree(row, "dMin", external.majorMinMm(), 1e-9);
      assertAgree(row, "d2Max", external.pitchMaxMm(), 1e-9);
      assertAgree(row, "d2Min", external.pitchMinMm(), 1e-9);
      assertAgree(row, "D1Min", internal.minorMinMm(), 1e-9);
      assertAgree(row, "D1Max", internal.minorMaxMm(), 1e-9);
      assertAgree(row, "D2Min", internal.pitchMinMm(), 1e-9);
      assertAgree(row, "D2Max", internal.pitchMaxMm(), 1e-9);
      compared++;
    }
    assertThat(compared).isEqualTo(20);
  }

  @Test
  void unifiedLimitsAgree() throws IOException {
    int compared = 0;
    for (String row : rows("unified")) {
      ThreadSize thread = ThreadCatalogue.find(word(row, "name")).orElseThrow();
      var external = thread.external().orElseThrow();
      assertAgree(row, "dMax", external.majorMaxMm() / IN_MM, 1e-9);
      assertAgree(row, "dMin", external.majorMinMm() / IN_MM, 1e-9);
      assertAgree(row, "d2Max", external.pitchMaxMm() / IN_MM, 1e-9);
      assertAgree(row, "d2Min", external.pitchMinMm() / IN_MM, 1e-9);
      if (row.contains("\"class2B\"")) {
        var internal = thread.internal().orElseThrow();
        assertAgree(row, "D2Min", internal.pitchMinMm() / IN_MM, 1e-9);
        assertAgree(row, "D2Max", internal.pitchMaxMm() / IN_MM, 1e-9);
        assertAgree(row, "D1Min", internal.minorMinMm() / IN_MM, 1e-9);
        assertAgree(row, "D1Max", internal.minorMaxMm() / IN_MM, 1e-9);
      }
      compared++;
    }
    assertThat(compared).isEqualTo(10);
  }

  @Test
  void pipeThreadsAgree() throws IOException {
    int compared = 0;
    for (String row : rows("pipeG")) {
      ThreadSize classA = ThreadCatalogue.find(word(row, "name")).orElseThrow();
      ThreadSize classB = ThreadCatalogue.find(word(row, "name") + " B").orElseThrow();
      var external = classA.external().orElseThrow();
      var internal = classA.internal().orElseThrow();
      assertAgree(row, "P", classA.pitchMm(), 1e-9);
      assertAgree(row, "major", external.majorMaxMm(), 1e-9);
      assertAgree(row, "pitch", classA.pitchDiameterMm(), 1e-9);
      assertAgree(row, "minor", classA.minorMm(), 1e-9);
      assertAgree(row, "TD2_int", internal.pitchMaxMm() - internal.pitchMinMm(), 1e-9);
      assertAgree(row, "TD1_int", internal.minorMaxMm() - internal.minorMinMm(), 1e-9);
      assertAgree(row, "Td2_ext_A", external.pitchMinMm() - external.pitchMaxMm(), 1e-9);
      assertAgree(row, "Td_ext", external.majorMinMm() - external.majorMaxMm(), 1e-9);
      var coarser = classB.external().orElseThrow();
      assertAgree(row, "Td2_ext_B", coarser.pitchMinMm() - coarser.pitchMaxMm(), 1e-9);
      compared++;
    }
    assertThat(compared).isEqualTo(12);
  }

  private static void assertAgree(String row, String key, double ours, double tolerance) {
    Matcher matcher = Pattern.compile("\"" + key + "\": (-?[\\d.]+)").matcher(row);
    assertThat(matcher.find()).as("%s in %s", key, row).isTrue();
    assertThat(ours)
        .as("%s of %s", key, word(row, "name"))
        .isCloseTo(Double.parseDouble(matcher.group(1)), within(tolerance));
  }

  private static String word(String row, String key) {
    Matcher matcher = Pattern.compile("\"" + key + "\": \"([^\"]*)\"").matcher(row);
    assertThat(matcher.find()).as("%s in %s", key, row).isTrue();
    return matcher.group(1);
  }

  /** The rows of one section of the file, each as text that begins with its name. */
  private static String[] rows(String section) throws IOException {
    Path root = Path.of("").toAbsolutePath();
    while (!Files.exists(root.resolve("shop/pom.xml")) && root.getParent() != null) {
      root = root.getParent();
    }
    Path file = root.resolveSibling("shared/data/tolerances/threads.json");
    assumeTrue(Files.exists(file), "skipped: no shared/data/tolerances/threads.json");
    String text = Files.readString(file);
    int start = text.indexOf("\"rows\"", text.indexOf("\"" + section + "\": {"));
    int end = text.indexOf("}\n]\n}", start);
    return text.substring(text.indexOf("\"name\"", start), end).split("(?=\"name\": )", -1);
  }
}
