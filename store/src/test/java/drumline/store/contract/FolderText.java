package drumline.store.contract;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** All files of a folder, by path, with their bytes as a text of Latin-1. */
final class FolderText {
  private FolderText() {}

  static Map<String, String> of(Path folder) throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.walk(folder)) {
      files = all.filter(Files::isRegularFile).toList();
    }
    Map<String, String> texts = new TreeMap<>();
    for (Path file : files) {
      texts.put(
          folder.relativize(file).toString(),
          new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
    }
    return texts;
  }
}
