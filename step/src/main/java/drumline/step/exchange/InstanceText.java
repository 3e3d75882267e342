package drumline.step.exchange;

import java.util.ArrayList;
import java.util.List;

/** Reads one instance, from the character behind its equals sign up to its semicolon. */
final class InstanceText {
  private static final int DEEPEST = 200;

  private final Scanner scanner;

  InstanceText(Scanner scanner) {
    this.scanner = scanner;
  }

  /** The entities of an instance; several for one in parentheses. */
  List<Entity> entities(String place) {
    List<Entity> entities = new ArrayList<>();
    if (scanner.take('(')) {
      while (!scanner.take(')')) {
        entities.add(entity(place));
      }
      if (entities.isEmpty()) {
        throw scanner.fault("\"()\"", "one entity or more in a complex instance", "");
      }
    } else {
      entities.add(entity(place));
    }
    scanner.expect(';', "behind the instance");
    return entities;
  }

  private Entity entity(String place) {
    String name = scanner.keyword();
    if (name.isEmpty()) {
      throw scanner.fault(scanner.here(), "the name of an entity", "");
    }
    scanner.expect('(', "behind " + name);
    return new Entity(place, name, values(0));
  }

  /** Values up to the closing parenthesis. */
  List<StepValue> values(int depth) {
    if (depth > DEEPEST) {
      throw scanner.fault("lists within lists", "at most " + DEEPEST + " levels", "");
    }
    List<StepValue> values = new ArrayList<>();
    if (scanner.take(')')) {
      return values;
    }
    do {
      values.add(value(depth));
    } while (scanner.take(','));
    scanner.expect(')', "or \",\" behind a value");
    return values;
  }

  private StepValue value(int depth) {
    char c = scanner.peek();
    switch (c) {
      case '#', '@' -> {
        return reference(c);
      }
      case '\'' -> {
        return new StepValue.Text(scanner.text());
      }
      case '"' -> {
        return new StepValue.Bits(scanner.upTo('"'));
      }
      case '.' -> {
        return scanner.isFraction()
            ? new StepValue.Figure(scanner.number())
            : new StepValue.Word(scanner.upTo('.').trim());
      }
      case '<' -> {
        return new StepValue.Named(scanner.upTo('>'));
      }
      case '$' -> {
        scanner.take(c);
        return StepValue.Absent.OMITTED;
      }
      case '*' -> {
        scanner.take(c);
        return StepValue.Absent.DERIVED;
      }
      case '(' -> {
        scanner.take(c);
        return new StepValue.Items(values(depth + 1));
      }
      default -> {
        return numberOrTyped(c, depth);
      }
    }
  }

  private StepValue reference(char mark) {
    scanner.take(mark);
    char next = scanner.peek();
    if (mark == '#' && next >= '0' && next <= '9') {
      return new StepValue.Ref(scanner.id());
    }
    return new StepValue.Named(mark + scanner.keyword());
  }

  private StepValue numberOrTyped(char c, int depth) {
    if ((c >= '0' && c <= '9') || c == '-' || c == '+') {
      return new StepValue.Figure(scanner.number());
    }
    String type = scanner.keyword();
    if (type.isEmpty()) {
      throw scanner.fault(scanner.here(), "a value", "");
    }
    scanner.expect('(', "behind " + type);
    return new StepValue.Typed(type, values(depth + 1));
  }
}
