package drumline.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Writes all drawings of the tests to {@code target/gallery} for looking at. */
class GalleryTest {

  @Test
  void writes() throws IOException {
    Path folder = Files.createDirectories(Path.of("target", "gallery"));
    for (Map.Entry<String, String> entry : Gallery.all().entrySet()) {
      Path file = folder.resolve(entry.getKey() + ".svg");
      Files.writeString(file, entry.getValue());
      assertThat(Files.size(file)).isGreaterThan(1000);
    }
  }
}
