package drumline.app.report;

import drumline.app.study.MachineStudy;
import drumline.app.study.PlannedLayout;
import drumline.economics.cost.OptionNeed;
import drumline.economics.tool.ToolUse;
import drumline.sheets.content.money.EquipmentRow;
import drumline.sheets.content.money.ToolRow;
import drumline.sheets.content.plain.Tone;
import drumline.shop.layout.Placement;
import drumline.shop.operation.Operation;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Tool list, and the equipment that the machine must have. */
final class ToolRows {
  private ToolRows() {}

  static List<ToolRow> tools(MachineStudy study, PlannedLayout plan) {
    Map<String, ToolUse> uses = new HashMap<>();
    plan.money().tools().uses().forEach(use -> uses.put(use.wear().operationId(), use));
    List<ToolRow> rows = new ArrayList<>();
    for (Placement placement : plan.layout().placements()) {
      ToolUse use = uses.get(placement.operationId());
      if (use != null) {
        rows.add(row(study, placement, use));
      }
    }
    return rows;
  }

  private static ToolRow row(MachineStudy study, Placement placement, ToolUse use) {
    Operation operation = study.route().operation(placement.operationId());
    BigDecimal price =
        study
            .inquiry()
            .rates()
            .convert(operation.tool().price(), operation.tool().family().currency());
    return new ToolRow(
        operation.tool().label(),
        placement.slideId(),
        operation.title(),
        operation.tool().family().edgesCount(),
        price,
        use.changedEveryCount(),
        use.plan() == ToolUse.Plan.COMMON_STOP ? "at the common stop" : "at a stop of its own",
        use.edgesPer1000Count(),
        use.costPerPiece().multiply(BigDecimal.valueOf(1000)),
        Tone.PLAIN);
  }

  static List<EquipmentRow> equipment(MachineStudy study, PlannedLayout plan) {
    return OptionNeed.of(study.machine(), study.route(), plan.layout()).stream()
        .map(need -> row(study, need))
        .toList();
  }

  private static EquipmentRow row(MachineStudy study, OptionNeed need) {
    BigDecimal price =
        study.inquiry().rates().convert(need.price(), study.machine().cost().currency());
    String words = need.equipment().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    String operations =
        need.operationIds().stream()
            .map(id -> study.route().operation(id).title())
            .collect(Collectors.joining("; "));
    return new EquipmentRow("slide " + need.slideId(), words, operations, Optional.of(price));
  }
}
