package drumline.app.report;

import drumline.app.study.MachineStudy;
import drumline.app.study.PlannedLayout;
import drumline.cycle.timeline.OperationSpan;
import drumline.cycle.timeline.PositionTimeline;
import drumline.economics.tool.ToolWear;
import drumline.sheets.content.plain.Tone;
import drumline.sheets.content.process.OperationRow;
import drumline.sheets.content.process.OrderRow;
import drumline.sheets.content.process.PositionSheet;
import drumline.shop.operation.Operation;
import drumline.shop.operation.SpindleCondition;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** The process sheet: what happens at each position. */
final class ProcessRows {
  private final MachineStudy study;
  private final PlannedLayout plan;
  private final Map<String, ToolWear> wear = new HashMap<>();

  private ProcessRows(MachineStudy study, PlannedLayout plan) {
    this.study = study;
    this.plan = plan;
    plan.money().tools().uses().forEach(use -> wear.put(use.wear().operationId(), use.wear()));
  }

  static List<PositionSheet> positions(MachineStudy study, PlannedLayout plan) {
    ProcessRows rows = new ProcessRows(study, plan);
    List<PositionSheet> sheets = new ArrayList<>();
    plan.timeline().positions().forEach(p -> sheets.add(rows.sheet("Position " + p.position(), p)));
    PositionTimeline back = plan.timeline().back();
    if (back != null) {
      sheets.add(rows.sheet("Pick-up spindle", back));
    }
    return sheets;
  }

  static List<OrderRow> orders(MachineStudy study) {
    return study.route().orders().stream()
        .map(o -> new OrderRow(title(study, o.beforeId()), title(study, o.afterId()), o.reason()))
        .toList();
  }

  private static String title(MachineStudy study, String operationId) {
    return study.route().operation(operationId).title();
  }

  private PositionSheet sheet(String title, PositionTimeline position) {
    boolean governs = position.position() == plan.timeline().governing();
    String other =
        position.fixed().stream()
            .map(f -> String.format(Locale.ROOT, "%s %.2f s", f.title(), f.endS() - f.startS()))
            .collect(Collectors.joining("; "));
    return new PositionSheet(
        title,
        position.busyS(),
        position.slackS(),
        other,
        position.operations().stream().map(this::row).toList(),
        governs ? Tone.MARKED : Tone.PLAIN);
  }

  private OperationRow row(OperationSpan span) {
    Operation operation = study.route().operation(span.operationId());
    double n = span.spindleRevPerMin();
    boolean driven = operation.cut().toolRevPerMin() > 0;
    double power =
        driven && operation.condition() != SpindleCondition.TURNING
            ? operation.loads().toolPowerKw()
            : operation.loads().spindlePowerKw(n);
    ToolWear used = wear.get(operation.id());
    return new OperationRow(
        operation.id(),
        operation.title(),
        operation.tool().label(),
        span.slideId(),
        operation.condition(),
        n,
        driven ? OptionalDouble.of(operation.cut().toolRevPerMin()) : OptionalDouble.empty(),
        operation.cut().cuttingSpeedMPerMin(n),
        operation.cut().feedMmPerRev(),
        span.lengthS(),
        operation.loads().cuttingForceN(),
        operation.loads().torqueNm(),
        power,
        used == null ? 0 : used.piecesPerEdgeCount(),
        operation.reason(),
        Tone.PLAIN);
  }
}
