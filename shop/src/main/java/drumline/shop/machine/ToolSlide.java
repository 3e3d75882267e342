package drumline.shop.machine;

import java.util.Map;
import java.util.Set;

/**
 * A tool slide at one position.
 *
 * @param id name, unique within the machine, e.g. {@code 3-cross}
 * @param kind where it works from
 * @param axes axes it has
 * @param strokeMm travel of its working axis
 * @param rapidMPerMin rapid speed
 * @param accelerationMPerS2 acceleration of the axes
 * @param thrustN greatest feed force
 * @param seatCount tools it holds
 * @param toolShiftS time from one tool's end to the next one's start on this slide
 * @param equipment what is fitted or can be had, by kind; absent means none
 */
public record ToolSlide(
    String id,
    SlideKind kind,
    Set<Axis> axes,
    double strokeMm,
    double rapidMPerMin,
    double accelerationMPerS2,
    double thrustN,
    int seatCount,
    double toolShiftS,
    Map<Equipment, Fitting> equipment) {

  /** Copies the collections. */
  public ToolSlide {
    axes = Set.copyOf(axes);
    equipment = Map.copyOf(equipment);
  }

  /** The same slide with other equipment. */
  public ToolSlide withEquipment(Map<Equipment, Fitting> newEquipment) {
    return new ToolSlide(
        id,
        kind,
        axes,
        strokeMm,
        rapidMPerMin,
        accelerationMPerS2,
        thrustN,
        seatCount,
        toolShiftS,
        newEquipment);
  }

  /** Whether the equipment is fitted or can be had. */
  public boolean canHave(Equipment kind) {
    return equipment.getOrDefault(kind, Fitting.NONE) != Fitting.NONE;
  }
}
