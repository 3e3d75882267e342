package drumline.guard.source;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.guard.tree.ProjectTree;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The rules over the whole tree as it is. */
class HouseRulesTest {
  private static final List<JavaSource> SOURCES = JavaSource.all();

  static Stream<SourceRule> rules() {
    return Stream.of(
        new TypeNames(), new Packages(), new MethodLength(), new UnitSuffix(), new FormulaSource());
  }

  @ParameterizedTest
  @MethodSource("rules")
  void everySourceFollows(SourceRule rule) {
    assertThat(SOURCES).hasSizeGreaterThan(20);
    assertThat(SOURCES.stream().flatMap(source -> rule.breaches(source).stream())).isEmpty();
  }

  @Test
  void noTextFileHoldsWhatIsBanned() {
    List<Path> files = ProjectTree.textFiles();
    assertThat(files).contains(Path.of("pom.xml"), Path.of("drumline"), Path.of("check"));
    assertThat(
            files.stream()
                .flatMap(
                    file -> PlainText.breaches(file.toString(), ProjectTree.read(file)).stream()))
        .isEmpty();
  }

  @Test
  void packagesStaySmall() {
    Map<String, Long> sizes =
        SOURCES.stream()
            .map(source -> Path.of(source.file()))
            .filter(file -> !file.endsWith("package-info.java"))
            .collect(
                Collectors.groupingBy(
                    file -> file.getParent().toString(), TreeMap::new, Collectors.counting()));
    sizes.values().removeIf(count -> count <= 15);
    assertThat(sizes).as("packages of more than 15 files").isEmpty();
  }

  @Test
  void filesAndMethodsStayShort() {
    List<Long> files = sorted(SOURCES.stream().map(source -> source.text().lines().count()));
    List<Long> methods =
        sorted(SOURCES.stream().flatMap(source -> MethodLength.lengths(source).stream()));
    System.out.printf(
        "House sizes: %d files, median %d, 90 %% within %d, longest %d lines;"
            + " %d methods, 99 %% within %d, longest %d lines%n",
        files.size(),
        share(files, 0.5),
        share(files, 0.9),
        share(files, 1),
        methods.size(),
        share(methods, 0.99),
        share(methods, 1));
    assertThat(share(files, 0.5)).as("median length of a file").isLessThanOrEqualTo(90);
    assertThat(share(files, 0.9)).as("nine of ten files").isLessThanOrEqualTo(200);
    assertThat(share(methods, 0.99)).as("99 of 100 methods").isLessThanOrEqualTo(40);
  }

  private static List<Long> sorted(Stream<Long> lengths) {
    return lengths.sorted().toList();
  }

  /** The length within which the given share of all lies. */
  private static long share(List<Long> sorted, double share) {
    return sorted.get((int) Math.ceil(share * sorted.size()) - 1);
  }
}
