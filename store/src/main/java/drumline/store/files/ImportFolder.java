package drumline.store.files;

import drumline.shop.problem.Problem;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** A folder that is read: which files were used, and what was wrong with them. */
final class ImportFolder {
  private final Path folder;
  private final Set<String> unread;
  private final List<Problem> problems = new ArrayList<>();

  ImportFolder(Path folder) throws IOException {
    this.folder = folder;
    try (Stream<Path> all = Files.walk(folder)) {
      this.unread =
          new TreeSet<>(
              all.filter(Files::isRegularFile)
                  .map(folder::relativize)
                  .filter(file -> !file.getFileName().toString().startsWith("."))
                  .map(file -> file.toString().replace('\\', '/'))
                  .toList());
    }
  }

  /** The files that hold rows of a table, in the order of their numbers. */
  List<String> filesOf(TableShape shape) {
    return unread.stream()
        .filter(shape::matches)
        .sorted(Comparator.comparing(String::length).thenComparing(file -> file))
        .toList();
  }

  /** Whether the file is there. */
  boolean has(String file) {
    return Files.isRegularFile(folder.resolve(file));
  }

  /** The text of a file; empty, with a problem noted, if it is not there or is not UTF-8. */
  Optional<String> text(String file) throws IOException {
    unread.remove(file);
    try {
      byte[] bytes = Files.readAllBytes(folder.resolve(file));
      return Optional.of(
          StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
    } catch (NoSuchFileException e) {
      wrong("import-file-missing", file, "it is not there", "every file of the export");
    } catch (CharacterCodingException e) {
      wrong("import-not-utf-8", file, "it is not UTF-8", "text in UTF-8");
    }
    return Optional.empty();
  }

  void wrong(String code, String where, String found, String allowed) {
    problems.add(Problem.error(code, folder.resolve(where).toString(), found, allowed, ""));
  }

  /** Notes every file that nobody read, since what it holds would be lost. */
  void noteUnread() {
    for (String file : unread) {
      wrong("import-unknown-file", file, "nothing is known of such a file", "files of an export");
    }
  }

  List<Problem> problems() {
    return List.copyOf(problems);
  }
}
