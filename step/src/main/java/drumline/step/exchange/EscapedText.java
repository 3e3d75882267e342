package drumline.step.exchange;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * A string's characters behind its escapes: doubled apostrophes and backslashes, {@code \S\},
 * {@code \P.\}, {@code \X\}, {@code \X2\ … \X0\} and {@code \X4\ … \X0\}.
 *
 * <p>Source: [ISO-10303-21] string encoding, from memory.
 */
final class EscapedText {

  private EscapedText() {}

  static String read(byte[] bytes, int from, int to) {
    String raw = plain(bytes, from, to);
    if (raw.indexOf('\\') < 0 && raw.indexOf('\'') < 0) {
      return raw;
    }
    StringBuilder text = new StringBuilder();
    int page = 1;
    int i = 0;
    while (i < raw.length()) {
      char c = raw.charAt(i);
      if (c == '\'') {
        text.append(c);
        i += 2;
      } else if (c != '\\') {
        text.append(c);
        i++;
      } else if (raw.startsWith("\\\\", i)) {
        text.append('\\');
        i += 2;
      } else if (raw.startsWith("\\S\\", i) && i + 3 < raw.length()) {
        text.append(paged(page, raw.charAt(i + 3) + 128));
        i += 4;
      } else if (raw.startsWith("\\P", i) && i + 3 < raw.length() && raw.charAt(i + 3) == '\\') {
        page = raw.charAt(i + 2) - 'A' + 1;
        i += 4;
      } else if (raw.startsWith("\\X\\", i) && i + 5 <= raw.length()) {
        text.append(hex(raw.substring(i + 3, i + 5)));
        i += 5;
      } else if (raw.startsWith("\\X2\\", i) || raw.startsWith("\\X4\\", i)) {
        i = wide(raw, i, raw.charAt(i + 2) == '2' ? 4 : 8, text);
      } else {
        text.append(c);
        i++;
      }
    }
    return text.toString();
  }

  private static int wide(String raw, int at, int digits, StringBuilder text) {
    int end = raw.indexOf("\\X0\\", at);
    String body = raw.substring(at + 4, end < 0 ? raw.length() : end);
    for (int i = 0; i + digits <= body.length(); i += digits) {
      text.append(hex(body.substring(i, i + digits)));
    }
    return end < 0 ? raw.length() : end + 4;
  }

  private static String hex(String digits) {
    try {
      int code = Integer.parseInt(digits.toUpperCase(Locale.ROOT), 16);
      boolean half = code <= 0xFFFF;
      return half
          ? String.valueOf((char) code)
          : Character.isValidCodePoint(code) ? Character.toString(code) : "\uFFFD";
    } catch (NumberFormatException e) {
      return "\uFFFD";
    }
  }

  private static String paged(int page, int code) {
    String name = "ISO-8859-" + page;
    if (!Charset.isSupported(name)) {
      return "\uFFFD";
    }
    return new String(new byte[] {(byte) code}, Charset.forName(name));
  }

  private static String plain(byte[] bytes, int from, int to) {
    try {
      return StandardCharsets.UTF_8
          .newDecoder()
          .decode(ByteBuffer.wrap(bytes, from, to - from))
          .toString();
    } catch (CharacterCodingException e) {
      return new String(bytes, from, to - from, StandardCharsets.ISO_8859_1);
    }
  }
}
