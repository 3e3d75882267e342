package drumline.step.exchange;

import java.util.ArrayList;
import java.util.List;

/** Reads the sections of an exchange file once, checks their form, and notes where all stands. */
final class SectionReader {
  private static final String BEGIN = "ISO-10303-21";
  private static final String END = "END-ISO-10303-21";

  private final Source source;
  private final Scanner scanner;
  private final InstanceIndex index = new InstanceIndex();
  private final List<Entity> header = new ArrayList<>();

  SectionReader(Source source) {
    this.source = source;
    this.scanner = new Scanner(source, byteOrderMark(source.bytes()));
  }

  private static int byteOrderMark(byte[] bytes) {
    boolean marked =
        bytes.length > 2
            && bytes[0] == (byte) 0xEF
            && bytes[1] == (byte) 0xBB
            && bytes[2] == (byte) 0xBF;
    return marked ? 3 : 0;
  }

  ExchangeFile read() {
    if (!scanner.keyword().equals(BEGIN)) {
      throw source.fault(
          scanner.offset(),
          "a file that does not begin with \"" + BEGIN + ";\"",
          "a STEP file in the clear text form of ISO 10303-21",
          "Maybe the file is compressed, or of another form.");
    }
    scanner.expect(';', "behind " + BEGIN);
    boolean isOpen = true;
    while (isOpen) {
      isOpen = section();
    }
    int twice = index.close();
    if (twice >= 0) {
      throw source.fault(twice, "an instance number a second time", "each number once", "");
    }
    if (index.size() == 0) {
      throw scanner.fault("no instances", "a DATA section with instances", "");
    }
    return new ExchangeFile(source, header, index);
  }

  /** Reads one section; false at the end of the exchange structure. */
  private boolean section() {
    String name = scanner.keyword();
    switch (name) {
      case "HEADER" -> {
        scanner.expect(';', "behind HEADER");
        header();
      }
      case "DATA" -> {
        if (scanner.take('(')) {
          new InstanceText(scanner).values(0);
        }
        scanner.expect(';', "behind DATA");
        instances("ENDSEC");
        scanner.expect(';', "behind ENDSEC");
      }
      case "ANCHOR", "REFERENCE" -> {
        do {
          scanner.skipStatement();
        } while (!endsHere());
      }
      case END -> {
        scanner.expect(';', "behind " + END);
        return false;
      }
      default ->
          throw scanner.fault(
              name.isEmpty() ? scanner.here() : "\"" + name + "\"",
              "HEADER, DATA or " + END,
              scanner.peek() == 0 ? "Maybe the file was cut short." : "");
    }
    return true;
  }

  private boolean endsHere() {
    if (scanner.peek() != 'E') {
      return false;
    }
    boolean ends = scanner.keyword().equals("ENDSEC");
    if (ends) {
      scanner.expect(';', "behind ENDSEC");
    }
    return ends;
  }

  private void header() {
    while (true) {
      String place = source.name() + ", header";
      String name = scanner.keyword();
      if (name.equals("ENDSEC")) {
        scanner.expect(';', "behind ENDSEC");
        return;
      }
      scanner.expect('(', name.isEmpty() ? "or ENDSEC in the header" : "behind " + name);
      header.add(new Entity(place, name, new InstanceText(scanner).values(0)));
      scanner.expect(';', "behind " + name);
    }
  }

  private void instances(String end) {
    while (scanner.take('#')) {
      int id = scanner.id();
      scanner.expect('=', "behind #" + id);
      if (scanner.peek() == '&') {
        scope();
      }
      index.add(id, scanner.offset());
      for (Entity entity : new InstanceText(scanner).entities("")) {
        index.name(entity.name(), id);
      }
    }
    String word = scanner.keyword();
    if (!word.equals(end)) {
      throw scanner.fault(
          word.isEmpty() ? scanner.here() : "\"" + word + "\"",
          "an instance such as \"#12=…;\" or " + end,
          scanner.peek() == 0 ? "Maybe the file was cut short." : "");
    }
  }

  /** A scope of edition 1: instances that only one other refers to, and those it shows outside. */
  private void scope() {
    scanner.keyword();
    instances("ENDSCOPE");
    if (scanner.take('/')) {
      do {
        scanner.expect('#', "in the export list");
        scanner.id();
      } while (scanner.take(','));
      scanner.expect('/', "behind the export list");
    }
  }
}
