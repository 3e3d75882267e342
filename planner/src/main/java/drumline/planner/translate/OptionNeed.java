package drumline.planner.translate;

import drumline.shop.layout.Layout;
import drumline.shop.layout.Placement;
import drumline.shop.machine.Equipment;
import drumline.shop.machine.Fitting;
import drumline.shop.machine.Machine;
import drumline.shop.operation.Route;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A piece of equipment that a layout needs and the machine does not have as it stands.
 *
 * @param slideId slide to be fitted
 * @param equipment what is fitted
 * @param operationIds operations that need it there
 * @param price its price; empty if the machine's data give none
 * @param currency currency of the price, ISO 4217
 */
public record OptionNeed(
    String slideId,
    Equipment equipment,
    List<String> operationIds,
    Optional<BigDecimal> price,
    String currency) {

  /** Copies the list. */
  public OptionNeed {
    operationIds = List.copyOf(operationIds);
  }

  /** Each option that the layout uses, once for each slide, in the order of the placements. */
  public static List<OptionNeed> of(Route route, Machine machine, Layout layout) {
    Map<String, Map<Equipment, List<String>>> users = new LinkedHashMap<>();
    for (Placement placement : layout.placements()) {
      machine
          .findSlide(placement.slideId())
          .ifPresent(
              slide -> {
                Set<Equipment> needed = EnumSet.noneOf(Equipment.class);
                needed.addAll(route.operation(placement.operationId()).equipment());
                needed.removeIf(kind -> slide.equipment().get(kind) != Fitting.OPTION);
                for (Equipment kind : needed) {
                  users
                      .computeIfAbsent(slide.id(), id -> new LinkedHashMap<>())
                      .computeIfAbsent(kind, k -> new ArrayList<>())
                      .add(placement.operationId());
                }
              });
    }
    List<OptionNeed> needs = new ArrayList<>();
    users.forEach(
        (slideId, kinds) ->
            kinds.forEach(
                (kind, operationIds) ->
                    needs.add(
                        new OptionNeed(
                            slideId,
                            kind,
                            operationIds,
                            Optional.ofNullable(machine.cost().optionPrices().get(kind)),
                            machine.cost().currency()))));
    return needs;
  }
}
