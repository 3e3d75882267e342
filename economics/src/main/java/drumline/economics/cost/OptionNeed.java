package drumline.economics.cost;

import drumline.shop.layout.Layout;
import drumline.shop.layout.Placement;
import drumline.shop.machine.Equipment;
import drumline.shop.machine.Fitting;
import drumline.shop.machine.Machine;
import drumline.shop.machine.ToolSlide;
import drumline.shop.operation.Route;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A piece of equipment that a layout needs and that must be bought with the machine.
 *
 * @param slideId slide that gets it
 * @param equipment what
 * @param operationIds operations that need it there
 * @param price price in the machine's currency
 */
public record OptionNeed(
    String slideId, Equipment equipment, List<String> operationIds, BigDecimal price) {

  /** Copies the list. */
  public OptionNeed {
    operationIds = List.copyOf(operationIds);
  }

  private record Place(ToolSlide slide, Equipment equipment) {}

  /**
   * The options of a layout, in the order of its placements; each once for a slide.
   *
   * @throws IllegalArgumentException if an operation or slide is unknown, a slide cannot have what
   *     it needs, or an option has no price
   */
  public static List<OptionNeed> of(Machine machine, Route route, Layout layout) {
    Map<Place, List<String>> needs = new LinkedHashMap<>();
    for (Placement placement : layout.placements()) {
      ToolSlide slide = slide(machine, placement.slideId());
      route.operation(placement.operationId()).equipment().stream()
          .sorted()
          .filter(kind -> fitting(slide, kind) == Fitting.OPTION)
          .forEach(
              kind ->
                  needs
                      .computeIfAbsent(new Place(slide, kind), place -> new ArrayList<>())
                      .add(placement.operationId()));
    }
    return needs.entrySet().stream().map(entry -> need(machine, entry)).toList();
  }

  /** All options together. */
  public static BigDecimal total(List<OptionNeed> needs) {
    return needs.stream().map(OptionNeed::price).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private static OptionNeed need(Machine machine, Map.Entry<Place, List<String>> entry) {
    Equipment kind = entry.getKey().equipment();
    BigDecimal price = machine.cost().optionPrices().get(kind);
    if (price == null) {
      throw new IllegalArgumentException(
          "optionPrices: none for " + kind + " on " + machine.name() + ", allowed: a price for it");
    }
    return new OptionNeed(entry.getKey().slide().id(), kind, entry.getValue(), price);
  }

  private static ToolSlide slide(Machine machine, String id) {
    return machine
        .findSlide(id)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "slideId: no slide " + id + ", allowed: a slide of " + machine.name()));
  }

  private static Fitting fitting(ToolSlide slide, Equipment kind) {
    Fitting fitting = slide.equipment().getOrDefault(kind, Fitting.NONE);
    if (fitting == Fitting.NONE) {
      throw new IllegalArgumentException(
          "slideId: " + slide.id() + " cannot have " + kind + ", allowed: a slide that can");
    }
    return fitting;
  }
}
