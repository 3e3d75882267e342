package drumline.step.exchange;

import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Walks through the bytes of an exchange file, character by character and word by word. */
final class Scanner {
  private final Source source;
  private final byte[] bytes;
  private int at;

  Scanner(Source source, int at) {
    this.source = source;
    this.bytes = source.bytes();
    this.at = at;
  }

  int offset() {
    return at;
  }

  /** The next character that means something, without taking it; 0 at the end. */
  char peek() {
    blank();
    return at < bytes.length ? (char) (bytes[at] & 0xFF) : 0;
  }

  boolean take(char wanted) {
    if (peek() != wanted) {
      return false;
    }
    at++;
    return true;
  }

  void expect(char wanted, String where) {
    if (!take(wanted)) {
      throw source.fault(at, here(), "\"" + wanted + "\" " + where, "");
    }
  }

  /** What stands here, for a message. */
  String here() {
    if (at >= bytes.length) {
      return "the end of the file";
    }
    int to = at;
    while (to < bytes.length && to < at + 24 && bytes[to] >= ' ') {
      to++;
    }
    String text = new String(bytes, at, Math.max(1, to - at), StandardCharsets.ISO_8859_1);
    return "\"" + text.replaceAll("\\p{Cntrl}", "?") + "\"";
  }

  ExchangeFault fault(String found, String allowed, String hint) {
    return source.fault(at, found, allowed, hint);
  }

  /** A keyword in capitals, empty where none stands here. */
  String keyword() {
    peek();
    int from = at;
    if (at < bytes.length && (bytes[at] == '!' || bytes[at] == '&')) {
      at++;
    }
    while (at < bytes.length && isWordByte(bytes[at])) {
      at++;
    }
    return new String(bytes, from, at - from, StandardCharsets.ISO_8859_1).toUpperCase(Locale.ROOT);
  }

  /** The number after a hash or at sign. */
  int id() {
    int from = at;
    long id = 0;
    while (at < bytes.length && isDigit(bytes[at]) && id < Integer.MAX_VALUE) {
      id = id * 10 + bytes[at++] - '0';
    }
    if (at == from || id > Integer.MAX_VALUE) {
      throw fault(here(), "a number from 1 to " + Integer.MAX_VALUE + " behind \"#\"", "");
    }
    return (int) id;
  }

  /** Whether a full stop here begins a number, as some exporters write it against the standard. */
  boolean isFraction() {
    return at + 1 < bytes.length && isDigit(bytes[at + 1]);
  }

  double number() {
    int from = at;
    while (at < bytes.length && isNumberByte(bytes[at])) {
      at++;
    }
    String text = new String(bytes, from, at - from, StandardCharsets.ISO_8859_1);
    try {
      return Double.parseDouble(text.replace('D', 'E'));
    } catch (NumberFormatException e) {
      at = from;
      throw fault("\"" + text + "\"", "a number such as 12 or 1.5E-3", "");
    }
  }

  /** A string, whose opening apostrophe is next. */
  String text() {
    int open = at++;
    int from = at;
    while (at < bytes.length) {
      if (bytes[at] == '\'') {
        if (at + 1 < bytes.length && bytes[at + 1] == '\'') {
          at++;
        } else {
          at++;
          return EscapedText.read(bytes, from, at - 1);
        }
      }
      at++;
    }
    throw source.fault(open, "a string without end", "an apostrophe that closes it", "");
  }

  /** What stands between the character here and the next one of its closing kind. */
  String upTo(char close) {
    int open = at++;
    int from = at;
    while (at < bytes.length && bytes[at] != close && bytes[at] != ';') {
      at++;
    }
    if (at >= bytes.length || bytes[at] != close) {
      throw source.fault(open, "\"" + (char) bytes[open] + "\"", "a closing \"" + close + "\"", "");
    }
    return new String(bytes, from, at++ - from, StandardCharsets.ISO_8859_1);
  }

  /** Goes on to the place behind the next semicolon outside strings and comments. */
  void skipStatement() {
    while (true) {
      char c = peek();
      if (c == 0) {
        throw fault("the end of the file", "\";\"", "");
      }
      if (c == '\'') {
        text();
      } else {
        at++;
        if (c == ';') {
          return;
        }
      }
    }
  }

  private void blank() {
    while (at < bytes.length) {
      if ((bytes[at] & 0xFF) <= ' ') {
        at++;
      } else if (bytes[at] == '/' && at + 1 < bytes.length && bytes[at + 1] == '*') {
        comment();
      } else if (isPrintControl()) {
        at += 3;
      } else {
        return;
      }
    }
  }

  /** Print control directives, {@code \N\} and {@code \F\}. */
  private boolean isPrintControl() {
    return bytes[at] == '\\'
        && at + 2 < bytes.length
        && bytes[at + 2] == '\\'
        && (bytes[at + 1] == 'N' || bytes[at + 1] == 'F');
  }

  private void comment() {
    int open = at;
    at += 2;
    while (at + 1 < bytes.length && !(bytes[at] == '*' && bytes[at + 1] == '/')) {
      at++;
    }
    if (at + 1 >= bytes.length) {
      throw source.fault(open, "a comment without end", "\"*/\" that closes it", "");
    }
    at += 2;
  }

  private static boolean isWordByte(byte b) {
    boolean isLetter = (b >= 'A' && b <= 'Z') || (b >= 'a' && b <= 'z');
    return isLetter || isDigit(b) || b == '_' || b == '-';
  }

  private static boolean isDigit(byte b) {
    return b >= '0' && b <= '9';
  }

  private static boolean isNumberByte(byte b) {
    return isDigit(b) || b == '.' || b == '-' || b == '+' || b == 'E' || b == 'e' || b == 'D';
  }
}
