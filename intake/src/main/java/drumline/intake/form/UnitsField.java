package drumline.intake.form;

import drumline.shop.quantity.UnitSystem;

/** Reads which unit system a file declares; without one, sizes must carry their units. */
public final class UnitsField {

  /** Key at the top of a file. */
  public static final String KEY = "units";

  private UnitsField() {}

  /** Notes what the file declares. */
  public static void declare(Block top, String file) {
    top.find(KEY)
        .flatMap(field -> field.choice(UnitSystem.class))
        .ifPresent(system -> top.reading().declare(file, system));
  }

  /** What the file declares; metric where it declares nothing. */
  public static UnitSystem declared(Block top) {
    return top.find(KEY).flatMap(field -> field.choice(UnitSystem.class)).orElse(UnitSystem.METRIC);
  }
}
