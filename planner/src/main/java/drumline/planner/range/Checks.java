package drumline.planner.range;

/** Range checks whose message names the parameter, its value and what is allowed. */
public final class Checks {
  private Checks() {}

  /** The value is at least so much. */
  public static void atLeast(String name, long value, long least) {
    if (value < least) {
      throw new IllegalArgumentException(
          name + " is " + value + ", allowed: " + least + " or more");
    }
  }

  /** The value is in a range. */
  public static void between(String name, long value, long least, long most) {
    if (value < least || value > most) {
      throw new IllegalArgumentException(
          name + " is " + value + ", allowed: " + least + " to " + most);
    }
  }

  /** The text is not blank. */
  public static void notBlank(String name, String value) {
    if (value.isBlank()) {
      throw new IllegalArgumentException(name + " is empty, allowed: a name");
    }
  }
}
