package drumline.app.ask;

import drumline.app.json.ImportJson;
import drumline.intake.InquiryReader;
import drumline.intake.library.LibraryPaths;
import drumline.shop.problem.Problem;
import drumline.step.inquiry.InquiryText;
import drumline.step.piece.StepImport;
import drumline.step.piece.TurnedPiece;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A turned piece read from a solid model, as an inquiry for the user to edit.
 *
 * @param fileName name of the file
 * @param read what came of reading it
 */
public record ImportStep(String fileName, StepImport read) {
  private static final long LARGEST = 1L << 30;

  /**
   * Reads a file; what is wrong with it is among the problems.
   *
   * @param isFlipped whether the front is to be the other end than the rule chooses
   * @param solid which solid of the file, from 1; 0 for the only one
   */
  public static ImportStep file(Path file, boolean isFlipped, int solid) {
    String name = String.valueOf(file.getFileName());
    try {
      if (Files.size(file) > LARGEST) {
        return failed(name, file, "a file of more than 1 GB", "up to 1 GB");
      }
      return bytes(name, Files.readAllBytes(file), isFlipped, solid);
    } catch (IOException e) {
      return failed(name, file, "a file that cannot be read", "a STEP file");
    }
  }

  /** Reads the bytes of a file, as a page hands them over. */
  public static ImportStep bytes(String name, byte[] bytes, boolean isFlipped, int solid) {
    return new ImportStep(name, StepImport.read(name, bytes, isFlipped, solid));
  }

  private static ImportStep failed(String name, Path file, String found, String allowed) {
    Problem problem = Problem.error("file-unreadable", file.toString(), found, allowed, "");
    return new ImportStep(
        name, new StepImport(Optional.empty(), "", "", false, List.of(), 0, List.of(problem)));
  }

  /** The inquiry's text; empty where no piece was found. */
  public Optional<String> findText() {
    return read.piece().isPresent()
        ? Optional.of(InquiryText.of(read, fileName))
        : Optional.empty();
  }

  /** What a person must look at, one sentence each. */
  public List<String> notes() {
    return read.piece().map(TurnedPiece::notes).orElse(List.of());
  }

  /** What is wrong with the file. */
  public List<Problem> problems() {
    return read.problems();
  }

  /** What the check of inquiries says of the text, under a name for it. */
  public List<Problem> checks(String textName) {
    return findText()
        .map(text -> InquiryReader.readText(text, textName, Path.of(""), LibraryPaths.none()))
        .map(result -> result.problems())
        .orElse(List.of());
  }

  /** The report as JSON. */
  public String json() {
    return ImportJson.text(fileName, read);
  }
}
