package drumline.planner.model;

import static drumline.planner.range.Checks.atLeast;
import static drumline.planner.range.Checks.notBlank;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Equipment that can be bought, and how much of it the machine takes.
 *
 * @param options each once for a kind and slide
 * @param mostByKind most slides of the whole machine that can have a kind; no limit where absent
 */
public record EquipmentRules(List<Option> options, Map<String, Integer> mostByKind) {
  /**
   * A piece of equipment that has to be bought for a slide as soon as one of some tasks stands
   * there.
   *
   * @param kind what it is; limits hold for a kind on the whole machine
   * @param slideId the slide
   * @param taskIds tasks that need it there
   * @param priceMinor its price in minor units of any currency, 0 or more
   */
  public record Option(String kind, String slideId, List<String> taskIds, long priceMinor) {
    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if the kind is blank or the price negative
     */
    public Option {
      notBlank("kind", kind);
      atLeast("priceMinor", priceMinor, 0);
      taskIds = List.copyOf(taskIds);
    }
  }

  /** Copies the collections. */
  public EquipmentRules {
    options = List.copyOf(options);
    mostByKind = Map.copyOf(mostByKind);
  }

  /** Nothing can be bought, nothing is limited. */
  public static EquipmentRules none() {
    return new EquipmentRules(List.of(), Map.of());
  }

  /** Options of which a layout has a user on their slide. */
  public List<Option> bought(Layout layout) {
    Set<String> placed = new HashSet<>();
    layout.placements().forEach(p -> placed.add(p.taskId() + "@" + p.slideId()));
    return options.stream()
        .filter(o -> o.taskIds().stream().anyMatch(id -> placed.contains(id + "@" + o.slideId())))
        .toList();
  }

  /** What a layout's options cost together, in minor units. */
  public long priceMinor(Layout layout) {
    return bought(layout).stream().mapToLong(Option::priceMinor).sum();
  }

  /** True if no kind is bought more often than the machine takes it. */
  public boolean areKept(Layout layout) {
    if (mostByKind.isEmpty()) {
      return true;
    }
    List<Option> bought = bought(layout);
    return mostByKind.entrySet().stream()
        .allMatch(
            limit ->
                bought.stream().filter(o -> o.kind().equals(limit.getKey())).count()
                    <= limit.getValue());
  }
}
