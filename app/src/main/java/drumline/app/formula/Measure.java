package drumline.app.formula;

import drumline.shop.quantity.MoneyPer;
import drumline.shop.quantity.QuantityKind;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What an input or a result measures: how it is read, in which unit the formula holds it, and how
 * it is shown.
 *
 * <p>A measure with a kind is read and written by {@code shop.quantity}, in metric or inch units;
 * the others have one unit for all, or none.
 */
public enum Measure {
  /** A size or a way; mm. */
  LENGTH(QuantityKind.LENGTH, 1, "", "Mm"),
  /** A small height or bending; µm. */
  MICRON(QuantityKind.ROUGHNESS, 1, "", "Um"),
  /** Cutting speed; m/min. */
  SPEED(QuantityKind.SPEED_SURFACE, 1, "", "MPerMin"),
  /** Feed for each revolution; mm/rev. */
  FEED(QuantityKind.FEED_PER_REV, 1, "", "MmPerRev"),
  /** Feed for each tooth; mm. */
  TOOTH_FEED(QuantityKind.FEED_PER_TOOTH, 1, "", "Mm"),
  /** Feed or rapid of a slide; mm/min. */
  SLIDE_FEED(QuantityKind.FEED_RATE, 1, "", "MmPerMin"),
  /** Acceleration of a slide; mm/s². */
  SLIDE_GAIN(QuantityKind.ACCELERATION, 1000, "", "MmPerS2"),
  /** Spindle speed; rev/min. */
  ROTATION(QuantityKind.ROTATION, 1, "", "RevPerMin"),
  /** Acceleration of a spindle; rev/min/s. */
  ROTATION_GAIN(QuantityKind.ROTATION_GAIN, 1, "", "RevPerMinPerS"),
  /** An angle; deg. */
  ANGLE(QuantityKind.ANGLE, 1, "", "Deg"),
  /** Power; kW. */
  POWER(QuantityKind.POWER, 1, "", "Kw"),
  /** Torque; N·m. */
  TORQUE(QuantityKind.TORQUE, 1, "", "Nm"),
  /** Force; N. */
  FORCE(QuantityKind.FORCE, 1, "", "N"),
  /** Strength, specific force, modulus; N/mm². */
  STRESS(QuantityKind.STRESS, 1, "", "Mpa"),
  /** A time of the cycle; s. */
  SECONDS(QuantityKind.TIME, 1, "", "S"),
  /** A tool's life or change; min. */
  MINUTES(QuantityKind.TIME, 1.0 / 60, "min", "Min"),
  /** Hours of a machine; h. */
  HOURS(QuantityKind.TIME, 1.0 / 3600, "h", "H"),
  /** Density; kg/dm³. */
  DENSITY(QuantityKind.DENSITY, 1, "", "KgPerDm3"),
  /** Mass; kg. */
  MASS(QuantityKind.MASS, 1, "", "Kg"),
  /** Cross-section; mm². */
  SECTION(QuantityKind.SECTION, 1, "", "Mm2"),
  /** Volume; mm³. */
  VOLUME(QuantityKind.VOLUME, 1, "", "Mm3"),
  /** Removal rate; mm³/s. */
  REMOVAL_RATE(QuantityKind.REMOVAL_RATE, 1, "", "Mm3PerS"),
  /** Energy that a volume of chips takes; J/mm³. */
  UNIT_ENERGY(QuantityKind.ENERGY_PER_VOLUME, 1, "", "JPerMm3"),
  /** Moment of inertia; kg·m². */
  INERTIA(QuantityKind.INERTIA, 1, "", "KgM2"),
  /** A factor, exponent or coefficient, without unit. */
  FACTOR(QuantityKind.RATIO, 1, " ", "Ratio"),
  /** A share in per cent, which must be written with its sign. */
  SHARE(QuantityKind.RATIO, 100, "%", "Pct"),
  /** A whole number. */
  COUNT(null, 1, " ", "Count"),
  /** A number of pieces or revolutions that need not be whole. */
  AMOUNT(null, 1, " ", "Count"),
  /** Brinell hardness. */
  HARDNESS(null, 1, "HB", "Hb"),
  /** Second moment of area; mm⁴. */
  AREA_MOMENT(null, 1, "mm⁴", "Mm4"),
  /** Balance grade; mm/s. */
  BALANCE(null, 1, "mm/s", "MmPerS"),
  /** Gain of a position loop; 1/s. */
  LOOP_GAIN(null, 1, "1/s", "PerS"),
  /** Angular acceleration; rad/s². */
  ANGULAR_GAIN(null, 1, "rad/s²", "RadPerS2"),
  /** Pieces in an hour. */
  PER_HOUR(null, 1, "/h", "PerHour"),
  /** Years. */
  YEARS(null, 1, "years", "YearsCount"),
  /** One of several words. */
  CHOICE(null, 1, " ", ""),
  /** A text. */
  TEXT(null, 1, " ", ""),
  /** Money. */
  MONEY(MoneyPer.WHOLE, ""),
  /** Money for an hour. */
  MONEY_PER_HOUR(MoneyPer.HOUR, "PerHour"),
  /** Money for a kilowatt hour. */
  MONEY_PER_KWH(MoneyPer.KWH, "PerKwh");

  private final Optional<QuantityKind> kind;
  private final Optional<MoneyPer> moneyPer;
  private final double scale;
  private final String ownUnit;
  private final String suffix;

  Measure(@Nullable QuantityKind kind, double scale, String unit, String suffix) {
    this.kind = Optional.ofNullable(kind);
    this.moneyPer = Optional.empty();
    this.scale = scale;
    this.ownUnit = unit;
    this.suffix = suffix;
  }

  Measure(MoneyPer per, String suffix) {
    this.kind = Optional.empty();
    this.moneyPer = Optional.of(per);
    this.scale = 1;
    this.ownUnit = "";
    this.suffix = suffix;
  }

  /** Kind of quantity that reads and writes it; empty for numbers without one, words and money. */
  public Optional<QuantityKind> kind() {
    return kind;
  }

  /** What an amount of money pays for; empty for everything else. */
  public Optional<MoneyPer> moneyPer() {
    return moneyPer;
  }

  /** The formula's units in one internal unit of the kind. */
  public double scale() {
    return scale;
  }

  /** The one unit it is shown in whatever the unit system, blank for none; empty if the kind's. */
  public Optional<String> ownUnit() {
    return ownUnit.isEmpty() ? Optional.empty() : Optional.of(ownUnit.strip());
  }

  /** What its name ends in where the unit must stand in the name, e.g. {@code MmPerRev}. */
  public String suffix() {
    return suffix;
  }
}
