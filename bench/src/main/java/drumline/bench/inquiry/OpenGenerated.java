package drumline.bench.inquiry;

import drumline.app.ask.OpenInquiry;
import drumline.app.ask.Opened;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Opens generated inquiries as a user's files are opened. */
final class OpenGenerated {
  private OpenGenerated() {}

  /** The inquiry of a seed, with so many outside steps. */
  static Opened open(int seed, int stepCount) {
    try {
      Path file = Files.createTempFile("inquiry", ".yaml");
      try {
        Files.writeString(file, GeneratedInquiry.text(seed, stepCount), StandardCharsets.UTF_8);
        return OpenInquiry.file(file, null);
      } finally {
        Files.delete(file);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
