package drumline.app.formula.identity;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.app.formula.face.FormulaCatalogue;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** No formula class of the cutting module is out of a person's reach. */
class CoverageTest {
  /** Parts that others are made of, and tables that fill defaults. */
  private static final Set<String> PARTS =
      Set.of("KienzleTable", "Provenance", "Require", "ValidityNote");

  private static final String HEAD = "public (final class|record|enum|sealed interface) .*";

  @Test
  void everyPublicClassOfCuttingIsReachedByName() throws IOException {
    Set<String> reached =
        FormulaCatalogue.all().stream()
            .flatMap(formula -> formula.classes().stream())
            .map(Class::getSimpleName)
            .collect(Collectors.toSet());
    Set<String> missing = new TreeSet<>();
    try (Stream<Path> files = Files.walk(Path.of("..", "cutting", "src", "main", "java"))) {
      files
          .filter(file -> file.toString().endsWith(".java"))
          .filter(CoverageTest::isPublic)
          .map(file -> file.getFileName().toString().replace(".java", ""))
          .filter(name -> !reached.contains(name) && !PARTS.contains(name))
          .forEach(missing::add);
    }
    assertThat(missing).isEmpty();
  }

  private static boolean isPublic(Path file) {
    try {
      return Files.readString(file).lines().anyMatch(line -> line.matches(HEAD));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
