package drumline.cutting.guard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Units in names, a source at each formula, and sizes: read from the sources themselves. */
class HouseRulesTest {
  private static final Path MAIN = Path.of("src/main/java/drumline/cutting");

  /** The closed list of units; longer endings that contain a unit are listed for the reader. */
  private static final Set<String> UNITS =
      Set.of(
          ("Mm Um MmPerRev MmPerMin MPerMin RevPerMin N Nm Kw Mpa Deg Ms S Min H Pct Ratio"
                  + " Count PerPiece PerHour W Kg Nmm MmPerS2 PerS Mm2 Mm3 Mm4 Mm3PerS Cm3PerMin"
                  + " RevPerMinPerS RadPerS2 KgPerM3 KgM2 NPerUm JPerMm3 MmMin MmPerS Hb")
              .split(" "));

  private static final Pattern NUMBER =
      Pattern.compile("\\b(?:double|int|long|float|List<Double>)\\s+(\\w+)\\s*[,)]");
  private static final Pattern METHOD =
      Pattern.compile(
          "^\\s+(?:public |static |default )*(?:double|int|long|List<Double>)\\s+(\\w+)\\(",
          Pattern.MULTILINE);

  @Test
  void everyNumericParameterAndResultNamesItsUnit() throws IOException {
    List<String> wrong = new ArrayList<>();
    for (Map.Entry<Path, String> source : sources().entrySet()) {
      if (source.getKey().getParent().endsWith("validity")) {
        continue; // carries the unit as text, or checks numbers of any unit
      }
      String code = withoutComments(source.getValue());
      for (Pattern pattern : List.of(NUMBER, METHOD)) {
        Matcher matcher = pattern.matcher(code);
        while (matcher.find()) {
          String name = matcher.group(1);
          boolean lambdaOrPrivate = isPrivate(code, matcher.start());
          if (!lambdaOrPrivate && !endsWithUnit(name)) {
            wrong.add(source.getKey() + ": " + name);
          }
        }
      }
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void everyFormulaNamesItsSource() throws IOException {
    List<String> wrong = new ArrayList<>();
    sources()
        .forEach(
            (path, text) -> {
              if (!path.endsWith("package-info.java") && !text.contains("<p>Source: ")) {
                wrong.add(path.toString());
              }
            });
    assertThat(wrong).isEmpty();
  }

  @Test
  void filesAndPackagesStaySmall() throws IOException {
    Map<Path, Integer> filesIn = new TreeMap<>();
    List<String> wrong = new ArrayList<>();
    for (Map.Entry<Path, String> source : sources().entrySet()) {
      filesIn.merge(source.getKey().getParent(), 1, Integer::sum);
      if (source.getValue().lines().count() > 400) {
        wrong.add(source.getKey() + " has more than 400 lines");
      }
    }
    filesIn.forEach(
        (folder, count) -> {
          if (count > 15) {
            wrong.add(folder + " has " + count + " files");
          }
        });
    assertThat(wrong).isEmpty();
    assertThat(filesIn).hasSizeGreaterThan(10);
  }

  @Test
  void theUnitRuleSeesAMissingUnit() {
    assertThat(endsWithUnit("depth")).isFalse();
    assertThat(endsWithUnit("S")).isFalse();
    assertThat(endsWithUnit("depthMm")).isTrue();
    assertThat(endsWithUnit("revPerMin")).isTrue();
    Matcher matcher = NUMBER.matcher("static double timeS(double feed, int teethCount)");
    assertThat(matcher.find()).isTrue();
    assertThat(matcher.group(1)).isEqualTo("feed");
  }

  private static boolean endsWithUnit(String name) {
    return UNITS.stream()
        .anyMatch(
            unit ->
                (name.endsWith(unit) && name.length() > unit.length())
                    || (name.length() > 1 && name.equals(decapitalised(unit))));
  }

  private static String decapitalised(String unit) {
    return unit.substring(0, 1).toLowerCase(Locale.ROOT) + unit.substring(1);
  }

  /** Whether the declaration around a match is a private method: its names are its own. */
  private static boolean isPrivate(String code, int at) {
    int head = Math.max(code.lastIndexOf(';', at), code.lastIndexOf('}', at));
    return code.substring(head + 1, at).contains("private ");
  }

  private static String withoutComments(String text) {
    return text.replaceAll("(?s)/\\*.*?\\*/", "").replaceAll("//[^\n]*", "");
  }

  private static Map<Path, String> sources() throws IOException {
    Map<Path, String> texts = new TreeMap<>();
    try (Stream<Path> paths = Files.walk(MAIN)) {
      for (Path path : paths.filter(p -> p.toString().endsWith(".java")).toList()) {
        texts.put(path, Files.readString(path));
      }
    }
    return texts;
  }
}
