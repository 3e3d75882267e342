package drumline.intake.frozen;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.intake.InquiryReader;
import drumline.intake.ReadResult;
import drumline.intake.library.LibraryPaths;
import drumline.shop.problem.Problem;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that are no inquiry at all get one clear message each; our own words, kept as they are. */
class FileFaultsTest {

  @TempDir private Path folder;

  @Test
  void missingFile() {
    assertThat(lines(folder.resolve("none.yaml")))
        .containsExactly("error: none.yaml: no such file; allowed: a file that exists.");
  }

  @Test
  void folderInsteadOfFile() {
    assertThat(lines(folder))
        .singleElement()
        .asString()
        .endsWith("a folder; allowed: a text file.");
  }

  @Test
  void emptyFile() throws IOException {
    assertThat(lines(file(new byte[0])))
        .containsExactly(
            "error: a.yaml: an empty file; allowed: keys with values, such as \"units: metric\".");
  }

  @Test
  void onlyRemarks() throws IOException {
    assertThat(lines(file("# nothing yet\n")))
        .containsExactly(
            "error: a.yaml: a file without keys; allowed: keys with values, such as \"units:"
                + " metric\".");
  }

  @Test
  void listInsteadOfKeys() throws IOException {
    assertThat(lines(file("- a\n- b\n")))
        .containsExactly(
            "error: a.yaml:1:1: a list of 2; allowed: keys with values, such as \"units:"
                + " metric\".");
  }

  @Test
  void binaryFile() throws IOException {
    assertThat(lines(file(new byte[] {'P', 'K', 3, 4, 0, 0, 1})))
        .containsExactly("error: a.yaml: a binary file; allowed: a text file in YAML form.");
  }

  @Test
  void tooLargeFile() throws IOException {
    assertThat(lines(file("#".repeat(10_000_000))))
        .containsExactly("error: a.yaml: more than 1 MB; allowed: at most 1 MB of text.");
  }

  @Test
  void otherEncodings() throws IOException {
    Charset windows = Charset.forName("windows-1252");
    assertThat(lines(file("units: metric\ninquiry:\n  title: Büchse\n".getBytes(windows))))
        .containsExactly(
            "error: a.yaml:3: bytes that are no UTF-8 text; allowed: text saved as UTF-8. Maybe the"
                + " editor saves in another encoding, such as Windows-1252.");
    assertThat(lines(file("units: metric".getBytes(StandardCharsets.UTF_16))))
        .containsExactly(
            "error: a.yaml: text in UTF-16; allowed: text saved as UTF-8. Maybe save it again with"
                + " the encoding UTF-8.");
  }

  @Test
  void byteOrderMarkIsNoFault() throws IOException {
    assertThat(lines(file("\uFEFFunits: metric\n"))).noneMatch(line -> line.contains("character"));
  }

  @Test
  void referencesThatGrowWithoutEnd() throws IOException {
    StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
    for (int i = 1; i < 10; i++) {
      String one = "*a" + (i - 1);
      bomb.append("a" + i + ": &a" + i + " [" + (one + ", ").repeat(9) + one + "]\n");
    }
    assertThat(lines(file(bomb.toString())))
        .hasSize(1)
        .first()
        .asString()
        .endsWith("more than 100000 values; allowed: fewer values.");
  }

  @Test
  void nestedWithoutEnd() throws IOException {
    assertThat(lines(file("a: " + "[".repeat(100_000))))
        .containsExactly(
            "error: a.yaml:1:43: more than 40 levels, one inside the other; allowed: at most 40"
                + " levels.");
  }

  @Test
  void twoDocuments() throws IOException {
    assertThat(lines(file("units: metric\n---\nunits: inch\n")))
        .singleElement()
        .asString()
        .startsWith("error: a.yaml:2:1: expected a single document in the stream");
  }

  @Test
  void invisibleCharacter() throws IOException {
    assertThat(lines(file("units: metric\ninquiry: \u0007\n")))
        .containsExactly(
            "error: a.yaml:2: the invisible character U+0007; allowed: printable characters.");
  }

  private Path file(String text) throws IOException {
    return file(text.getBytes(StandardCharsets.UTF_8));
  }

  private Path file(byte[] bytes) throws IOException {
    return Files.write(folder.resolve("a.yaml"), bytes);
  }

  private static List<String> lines(Path file) {
    ReadResult result = InquiryReader.read(file, LibraryPaths.none());
    assertThat(result.inquiry()).isEmpty();
    return result.problems().stream().map(Problem::toLine).toList();
  }
}
