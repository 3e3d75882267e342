package drumline.shop.quantity;

import java.util.Locale;

/**
 * What a quantity measures; each kind is held in one internal unit, and other units exist only at
 * the edge.
 */
public enum QuantityKind {
  /** A size, a stroke, a bar length; held in mm. */
  LENGTH("mm"),
  /** Cutting speed at the surface; held in m/min. */
  SPEED_SURFACE("m/min"),
  /** Feed for each turn of the spindle; held in mm/rev. */
  FEED_PER_REV("mm/rev"),
  /** Feed for each cutting edge of a milling tool; held in mm. */
  FEED_PER_TOOTH("mm/tooth"),
  /** Feed of a slide in time; held in mm/min. */
  FEED_RATE("mm/min"),
  /** Rapid traverse of a slide; held in m/min. */
  RAPID("m/min"),
  /** Acceleration of a slide; held in m/s². */
  ACCELERATION("m/s²"),
  /** Spindle speed; held in rev/min. */
  ROTATION("rev/min"),
  /** An angle; held in deg. */
  ANGLE("deg"),
  /** Power; held in kW. */
  POWER("kW"),
  /** Torque; held in Nm. */
  TORQUE("Nm"),
  /** Force or thrust; held in N. */
  FORCE("N"),
  /** Strength, specific cutting force, pressure; held in MPa, which is N/mm². */
  STRESS("MPa"),
  /** Time; held in s. */
  TIME("s"),
  /** Density; held in kg/dm³, which is g/cm³. */
  DENSITY("kg/dm³"),
  /** Height of roughness, such as Ra; held in µm. */
  ROUGHNESS("µm"),
  /** A share of a whole; held as a ratio, so that 3 % is 0.03. */
  RATIO("ratio"),
  /** Mass; held in kg. */
  MASS("kg"),
  /** Floor space; held in m². */
  AREA("m²"),
  /** Cross-section of a bar or chip; held in mm². */
  SECTION("mm²"),
  /** Volume of a piece or of chips; held in mm³. */
  VOLUME("mm³"),
  /** Chips removed in time; held in mm³/s. */
  REMOVAL_RATE("mm³/s"),
  /** Energy that a volume of chips takes; held in J/mm³. */
  ENERGY_PER_VOLUME("J/mm³"),
  /** Moment of inertia of what turns; held in kg m². */
  INERTIA("kg m²"),
  /** How fast a spindle gains speed; held in rev/min/s. */
  ROTATION_GAIN("rev/min/s");

  private final String internalUnit;

  QuantityKind(String internalUnit) {
    this.internalUnit = internalUnit;
  }

  /** Symbol of the unit in which the program holds this kind. */
  public String internalUnit() {
    return internalUnit;
  }

  /** The kind as a shop word for messages, e.g. {@code "feed per rev"}. */
  public String words() {
    return switch (this) {
      case SPEED_SURFACE -> "surface speed";
      case ROTATION -> "spindle speed";
      case ROTATION_GAIN -> "spindle acceleration";
      default -> name().toLowerCase(Locale.ROOT).replace('_', ' ');
    };
  }
}
