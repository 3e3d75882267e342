package drumline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StepCommandTest {
  private static final Path FILES =
      Path.of("..", "step", "src", "test", "resources", "drumline", "step", "published");

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"pin-ap203-inch", "pin-ap214-mm", "bolt-ap242-metre"})
  void whatIsImportedHasNothingWrong(String name) throws IOException {
    Path out = folder.resolve(name + ".yaml");
    Path json = folder.resolve(name + ".json");
    String file = FILES.resolve(name + ".step").toString();
    Terminal run =
        Terminal.run("from-step", file, "--out", out.toString(), "--json", json.toString());
    assertThat(run.code()).as(run.all()).isZero();
    assertThat(run.out()).contains("Written to", "--flip", "REPLACE");
    assertThat(Files.readString(json, StandardCharsets.UTF_8)).contains("\"outside\"", "\"notes\"");
    Terminal check = Terminal.run("check", out.toString());
    assertThat(check.code()).as(check.all()).isZero();
    Terminal again = Terminal.run("from-step", file, "--out", out.toString());
    assertThat(again.code()).isEqualTo(2);
    assertThat(again.err()).contains("not there yet");
  }

  @Test
  void aFileThatIsNoneOrBrokenIsTold() throws IOException {
    assertThat(Terminal.run("from-step", folder.resolve("x.step").toString()).code()).isEqualTo(2);
    Path half = folder.resolve("half.step");
    String whole = Files.readString(FILES.resolve("pin-ap203-inch.step"), StandardCharsets.UTF_8);
    Files.writeString(half, whole.substring(0, whole.length() / 2), StandardCharsets.UTF_8);
    Terminal run = Terminal.run("from-step", half.toString());
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("half.step, line");
  }
}
