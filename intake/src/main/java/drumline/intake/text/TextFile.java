package drumline.intake.text;

import drumline.shop.problem.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Reads a file that should be a UTF-8 text of at most 1 MB. */
public final class TextFile {

  /** Largest file that is read, in bytes. */
  static final int LARGEST_COUNT = 1_000_000;

  private TextFile() {}

  /**
   * Reads the file; what is wrong with it is added to the problems.
   *
   * @param file the file
   * @param problems where to add
   */
  public static Optional<String> read(Path file, List<Problem> problems) {
    String name = String.valueOf(file.getFileName());
    if (Files.isDirectory(file)) {
      problems.add(Problem.error("file-missing", name, "a folder", "a text file", ""));
      return Optional.empty();
    }
    try (InputStream stream = Files.newInputStream(file)) {
      return decode(name, stream.readNBytes(LARGEST_COUNT + 1), problems);
    } catch (NoSuchFileException e) {
      problems.add(Problem.error("file-missing", name, "no such file", "a file that exists", ""));
    } catch (IOException e) {
      problems.add(Problem.error("file-unreadable", name, "cannot be read", "a readable file", ""));
    }
    return Optional.empty();
  }

  /** Bytes as text, or a problem where they are none. */
  static Optional<String> decode(String name, byte[] bytes, List<Problem> problems) {
    Optional<Problem> fault = findFault(name, bytes);
    if (fault.isPresent()) {
      problems.add(fault.get());
      return Optional.empty();
    }
    try {
      String text =
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(bytes))
              .toString();
      return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
    } catch (CharacterCodingException e) {
      problems.add(
          Problem.error(
              "file-not-utf-8",
              name + ":" + lineOfFirstFault(bytes),
              "bytes that are no UTF-8 text",
              "text saved as UTF-8",
              "Maybe the editor saves in another encoding, such as Windows-1252."));
      return Optional.empty();
    }
  }

  private static Optional<Problem> findFault(String name, byte[] bytes) {
    if (bytes.length > LARGEST_COUNT) {
      return Optional.of(
          Problem.error("file-too-large", name, "more than 1 MB", "at most 1 MB of text", ""));
    }
    if (bytes.length >= 2 && isUtf16Mark(bytes[0], bytes[1])) {
      return Optional.of(
          Problem.error(
              "file-not-utf-8",
              name,
              "text in UTF-16",
              "text saved as UTF-8",
              "Maybe save it again with the encoding UTF-8."));
    }
    for (byte b : bytes) {
      if (b == 0) {
        return Optional.of(
            Problem.error("file-not-text", name, "a binary file", "a text file in YAML form", ""));
      }
    }
    return Optional.empty();
  }

  private static boolean isUtf16Mark(byte first, byte second) {
    return (first == (byte) 0xFE && second == (byte) 0xFF)
        || (first == (byte) 0xFF && second == (byte) 0xFE);
  }

  private static int lineOfFirstFault(byte[] bytes) {
    ByteBuffer buffer = ByteBuffer.wrap(bytes);
    CharBuffer chars = CharBuffer.allocate(bytes.length + 1);
    CoderResult result =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .decode(buffer, chars, true);
    int end = result.isError() ? buffer.position() : bytes.length;
    int line = 1;
    for (int i = 0; i < end; i++) {
      line += bytes[i] == '\n' ? 1 : 0;
    }
    return line;
  }
}
