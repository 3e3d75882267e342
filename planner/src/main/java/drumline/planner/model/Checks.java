package drumline.planner.model;

/** Range checks whose message names the parameter, its value and what is allowed. */
final class Checks {
  private Checks() {}

  static void atLeast(String name, long value, long least) {
    if (value < least) {
      throw new IllegalArgumentException(
          name + " is " + value + ", allowed: " + least + " or more");
    }
  }

  static void between(String name, long value, long least, long most) {
    if (value < least || value > most) {
      throw new IllegalArgumentException(
          name + " is " + value + ", allowed: " + least + " to " + most);
    }
  }

  static void notBlank(String name, String value) {
    if (value.isBlank()) {
      throw new IllegalArgumentException(name + " is empty, allowed: a name");
    }
  }
}
