package drumline.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine;

/**
 * One run of the program as a person sees it.
 *
 * @param code exit code
 * @param out what it wrote as result
 * @param err problems and progress
 */
record Terminal(int code, String out, String err) {

  static Terminal run(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(out, true));
    line.setErr(new PrintWriter(err, true));
    return new Terminal(line.execute(args), out.toString(), err.toString());
  }

  String all() {
    return out + err;
  }

  /** An example of the tree, with one text in it replaced. */
  static Path changed(Path folder, String example, String text, String by) throws IOException {
    String whole = Files.readString(Path.of("..", "examples", example), StandardCharsets.UTF_8);
    if (!whole.contains(text)) {
      throw new IllegalArgumentException("text: not in " + example + ": " + text);
    }
    Path file = folder.resolve(example);
    Files.writeString(file, whole.replace(text, by), StandardCharsets.UTF_8);
    return file;
  }

  /** Path of an example of the tree. */
  static String example(String name) {
    return Path.of("..", "examples", name).toString();
  }
}
