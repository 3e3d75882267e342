package drumline.step.exchange;

import drumline.shop.problem.Problem;

/** The bytes of an exchange file with their lines. */
final class Source {
  private final String name;
  private final byte[] bytes;

  /**
   * The bytes of an exchange file with their lines.
   *
   * @param name name of the file, for messages
   * @param bytes its content
   */
  Source(String name, byte[] bytes) {
    this.name = name;
    this.bytes = bytes;
  }

  /** Name of the file, for messages. */
  String name() {
    return name;
  }

  /** Its content. */
  byte[] bytes() {
    return bytes;
  }

  int line(int offset) {
    int line = 1;
    for (int i = 0; i < Math.min(offset, bytes.length); i++) {
      boolean isFollowed = i + 1 < bytes.length && bytes[i + 1] == '\n';
      if (bytes[i] == '\n' || (bytes[i] == '\r' && !isFollowed)) {
        line++;
      }
    }
    return line;
  }

  String place(int offset) {
    return name + ", line " + line(offset);
  }

  ExchangeFault fault(int offset, String found, String allowed, String hint) {
    return new ExchangeFault(Problem.error("step-syntax", place(offset), found, allowed, hint));
  }
}
