package drumline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

class MainTest {

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @Test
  void versionIsTheOneOfTheBuild() {
    assertThat(execute("--version")).isZero();
    assertThat(out.toString()).matches("drumline \\d+\\.\\d+\\.\\d+\\S*\\R");
  }

  @Test
  void helpAndTheBareWordShowTheSameText() {
    assertThat(execute("--help")).isZero();
    String help = out.toString();
    out.getBuffer().setLength(0);
    assertThat(execute()).isZero();
    assertThat(out.toString()).isEqualTo(help).startsWith("Usage: drumline");
  }

  @Test
  void unknownOptionIsNamedAndEndsWithTwo() {
    assertThat(execute("--cyle")).isEqualTo(2);
    assertThat(err.toString()).startsWith("Unknown option: '--cyle'");
    assertThat(out.toString()).isEmpty();
  }

  private int execute(String... args) {
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(out, true));
    line.setErr(new PrintWriter(err, true));
    return line.execute(args);
  }
}
