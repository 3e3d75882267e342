package drumline.app.json;

import static drumline.app.json.PlanJson.round;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumline.app.study.MachineStudy;
import drumline.app.study.PlannedLayout;
import drumline.cycle.timeline.OperationSpan;
import drumline.economics.tool.ToolWear;
import drumline.shop.operation.Operation;
import java.util.HashMap;
import java.util.Map;

/** Writes one operation of {@code plan.json}. */
final class OperationJson {
  private final MachineStudy study;
  private final Map<String, ToolWear> tools = new HashMap<>();

  OperationJson(MachineStudy study, PlannedLayout plan) {
    this.study = study;
    plan.money().tools().uses().forEach(use -> tools.put(use.wear().operationId(), use.wear()));
  }

  void write(ObjectNode node, OperationSpan span) {
    Operation operation = study.route().operation(span.operationId());
    double n = span.spindleRevPerMin();
    node.put("id", operation.id());
    node.put("feature", operation.featureId());
    node.put("kind", operation.kind().words());
    node.put("title", operation.title());
    node.put("tool", operation.tool().label());
    node.put("slide", span.slideId());
    node.put("startS", round(span.startS(), 3));
    node.put("endS", round(span.endS(), 3));
    node.put("spindleRevPerMin", round(n, 0));
    node.put("toolRevPerMin", round(operation.cut().toolRevPerMin(), 0));
    node.put("cuttingSpeedMPerMin", round(operation.cut().cuttingSpeedMPerMin(n), 1));
    node.put("feedMmPerRev", round(operation.cut().feedMmPerRev(), 4));
    node.put("forceN", round(operation.loads().cuttingForceN(), 0));
    node.put("torqueNm", round(operation.loads().torqueNm(), 2));
    node.put(
        "powerKw", round(operation.loads().spindlePowerKw(n) + operation.loads().toolPowerKw(), 2));
    ToolWear wear = tools.get(operation.id());
    node.put("toolLifePieces", wear == null ? 0 : (long) (60 * wear.lifeMin() / wear.cutS()));
    ArrayNode sources = node.putArray("sources");
    operation.sources().forEach(sources::add);
  }
}
