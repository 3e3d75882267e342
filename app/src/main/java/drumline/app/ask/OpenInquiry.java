package drumline.app.ask;

import drumline.intake.InquiryReader;
import drumline.intake.library.LibraryPaths;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** Opens an inquiry: a file of the user's, or one of the shipped examples. */
public final class OpenInquiry {
  private static final String EXAMPLES = "/drumline/app/examples/";

  private OpenInquiry() {}

  /**
   * Opens a file.
   *
   * @param libraryFolder folder with library files of the user's own, or null
   */
  public static Opened file(Path file, @Nullable Path libraryFolder) {
    LibraryPaths own =
        libraryFolder == null ? LibraryPaths.none() : LibraryPaths.ofFolder(libraryFolder);
    return new Opened(InquiryReader.read(file, own));
  }

  /**
   * Opens a shipped example.
   *
   * @throws IllegalArgumentException if there is none of this name
   */
  public static Opened example(String name) {
    return new Opened(
        InquiryReader.readText(exampleText(name), name, Path.of(""), LibraryPaths.none()));
  }

  /**
   * The text of a shipped example.
   *
   * @throws IllegalArgumentException if there is none of this name
   */
  public static String exampleText(String name) {
    try (InputStream in = OpenInquiry.class.getResourceAsStream(EXAMPLES + name)) {
      if (in == null) {
        throw new IllegalArgumentException("name: no example " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
