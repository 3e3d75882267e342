package drumline.intake;

import drumline.intake.library.LibraryPaths;
import drumline.intake.text.TextFile;
import drumline.shop.problem.Problem;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads an inquiry file with the libraries it refers to; no file that a user writes makes it throw.
 */
public final class InquiryReader {

  private InquiryReader() {}

  /**
   * Reads a file.
   *
   * @param file the inquiry
   * @param overrides library files to read over the shipped ones, before those the inquiry names
   */
  public static ReadResult read(Path file, LibraryPaths overrides) {
    List<Problem> problems = new ArrayList<>();
    Optional<String> text = TextFile.read(file, problems);
    if (text.isEmpty()) {
      return new ReadResult(Optional.empty(), problems, List.of(), Map.of());
    }
    Path folder = file.toAbsolutePath().normalize().getParent();
    return readText(
        text.get(),
        String.valueOf(file.getFileName()),
        folder == null ? Path.of("") : folder,
        overrides);
  }

  /**
   * Reads a text.
   *
   * @param text the inquiry
   * @param name name of the text for messages
   * @param folder folder against which the library files it names are resolved
   * @param overrides library files to read over the shipped ones, before those the inquiry names
   */
  public static ReadResult readText(String text, String name, Path folder, LibraryPaths overrides) {
    return new InquiryRun(name, folder, overrides).read(text);
  }
}
