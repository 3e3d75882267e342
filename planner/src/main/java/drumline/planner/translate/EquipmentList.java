package drumline.planner.translate;

import drumline.planner.model.EquipmentRules;
import drumline.planner.model.Task;
import drumline.shop.machine.Equipment;
import drumline.shop.machine.Fitting;
import drumline.shop.machine.Machine;
import drumline.shop.machine.ToolSlide;
import drumline.shop.operation.Route;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Equipment that a machine can be fitted with, slide by slide, with its users, prices and limits.
 */
final class EquipmentList {
  private EquipmentList() {}

  static EquipmentRules of(Route route, Machine machine, List<Task> tasks) {
    Map<Equipment, String> names = new EnumMap<>(Equipment.class);
    for (Equipment kind : Equipment.values()) {
      names.put(kind, kind.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' '));
    }
    List<EquipmentRules.Option> options = new ArrayList<>();
    machine.drumSlides().forEach(slide -> add(route, machine, tasks, slide, names, options));
    if (machine.pickUp() != null) {
      machine.pickUp().slides().forEach(slide -> add(route, machine, tasks, slide, names, options));
    }
    Map<String, Integer> limits = new HashMap<>();
    machine
        .cost()
        .mostOptionsCount()
        .forEach((kind, most) -> limits.put(names.getOrDefault(kind, kind.name()), most));
    return new EquipmentRules(options, limits);
  }

  private static void add(
      Route route,
      Machine machine,
      List<Task> tasks,
      ToolSlide slide,
      Map<Equipment, String> names,
      List<EquipmentRules.Option> options) {
    for (Map.Entry<Equipment, String> kind : names.entrySet()) {
      if (slide.equipment().get(kind.getKey()) != Fitting.OPTION) {
        continue;
      }
      List<String> users =
          tasks.stream()
              .filter(task -> task.slideIds().contains(slide.id()))
              .map(Task::id)
              .filter(id -> route.operation(id).equipment().contains(kind.getKey()))
              .toList();
      if (!users.isEmpty()) {
        BigDecimal price =
            machine.cost().optionPrices().getOrDefault(kind.getKey(), BigDecimal.ZERO);
        options.add(
            new EquipmentRules.Option(
                kind.getValue(), slide.id(), users, price.movePointRight(2).longValue()));
      }
    }
  }
}
