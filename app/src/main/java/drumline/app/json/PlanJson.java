package drumline.app.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumline.app.study.MachineStudy;
import drumline.app.study.PlannedLayout;
import drumline.cycle.timeline.PositionTimeline;
import drumline.economics.study.MoneyStudy;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.machine.Machine;
import drumline.shop.problem.Problem;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/** Writes {@code plan.json}; the contract is {@code plan.schema.json} beside this class. */
public final class PlanJson {
  private static final String SCHEMA = "urn:drumline:plan:1";
  private static final ObjectMapper MAPPER =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  private PlanJson() {}

  /** The study as text, UTF-8, with a line end. */
  public static String text(MachineStudy study) {
    try {
      return MAPPER.writeValueAsString(node(study)) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("the plan cannot be written as JSON", e);
    }
  }

  private static ObjectNode node(MachineStudy study) {
    ObjectNode node = MAPPER.createObjectNode();
    node.put("schema", SCHEMA);
    inquiry(node.putObject("inquiry"), study.inquiry());
    machine(node.putObject("machine"), study.machine());
    node.put("feasible", study.isFeasible());
    if (study.plan().isPresent()) {
      planned(node, study, study.plan().orElseThrow());
    } else {
      node.putNull("cycle");
      node.putArray("positions");
      node.putNull("backWorking");
      node.putNull("output");
      node.putNull("cost");
      ObjectNode audit = node.putObject("audit");
      audit.put("passed", false);
      audit.putArray("checks");
    }
    problems(node.putArray("problems"), study);
    return node;
  }

  private static void inquiry(ObjectNode node, Inquiry inquiry) {
    node.put("title", inquiry.title());
    node.put("number", inquiry.number());
    node.put("customer", inquiry.customer());
    node.put("part", inquiry.part().name());
    node.put("material", inquiry.material().name());
  }

  private static void machine(ObjectNode node, Machine machine) {
    node.put("name", machine.name());
    node.put("title", machine.title());
    node.put("positions", machine.lastPosition());
  }

  private static void planned(ObjectNode node, MachineStudy study, PlannedLayout plan) {
    ObjectNode cycle = node.putObject("cycle");
    cycle.put("cycleS", round(plan.timeline().cycleS(), 3));
    plan.range()
        .ifPresent(
            range -> {
              cycle.put("cycleLowS", round(range.cycleLowS(), 3));
              cycle.put("cycleHighS", round(range.cycleHighS(), 3));
            });
    cycle.put("indexS", round(plan.timeline().indexS(), 3));
    cycle.put("governingPosition", plan.timeline().governing());
    cycle.put("lowerBoundS", round(plan.lowerBoundS(), 3));
    cycle.put("gapPct", round(plan.gapPct(), 2));
    cycle.put("provenOptimal", plan.isProvenOptimal());
    cycle.put("piecesPerIndex", plan.timeline().piecesPerIndexCount());
    cycle.put("planningWallMs", plan.planningWallMs());
    OperationJson operations = new OperationJson(study, plan);
    ArrayNode positions = node.putArray("positions");
    for (PositionTimeline position : plan.timeline().positions()) {
      ObjectNode one = positions.addObject();
      one.put("position", position.position());
      times(one, position, operations);
    }
    PositionTimeline back = plan.timeline().back();
    if (back == null) {
      node.putNull("backWorking");
    } else {
      times(node.putObject("backWorking"), back, operations);
    }
    money(node, study, plan);
    audit(node.putObject("audit"), plan);
  }

  private static void times(ObjectNode node, PositionTimeline position, OperationJson operations) {
    node.put("timeS", round(position.busyS(), 3));
    node.put("slackS", round(position.slackS(), 3));
    ArrayNode list = node.putArray("operations");
    position.operations().forEach(span -> operations.write(list.addObject(), span));
  }

  private static void money(ObjectNode node, MachineStudy study, PlannedLayout plan) {
    MoneyStudy money = plan.money();
    ObjectNode output = node.putObject("output");
    output.put("grossPerHour", round(money.output().grossPerHour(), 1));
    output.put("netPerHour", round(money.output().netPerHour(), 1));
    output.put("piecesPerBar", money.bar().loadsPerBarCount() * money.bar().piecesPerLoadCount());
    output.put("barYieldPct", round(money.bar().yieldPct(), 1));
    output.put("machinesNeeded", money.output().machinesCount());
    CostJson.write(node.putObject("cost"), study.inquiry(), money, plan.range());
  }

  private static void audit(ObjectNode node, PlannedLayout plan) {
    node.put("passed", plan.audit().isPassed());
    ArrayNode checks = node.putArray("checks");
    plan.audit()
        .findings()
        .forEach(
            check -> {
              ObjectNode one = checks.addObject();
              one.put("name", check.name());
              one.put("passed", check.isPassed());
              one.put("detail", check.detail());
            });
  }

  private static void problems(ArrayNode list, MachineStudy study) {
    for (Problem problem : study.problems()) {
      ObjectNode one = list.addObject();
      one.put("code", problem.code());
      one.put("severity", problem.severity().name().toLowerCase(Locale.ROOT));
      one.put("where", problem.where());
      one.put("found", problem.found());
      one.put("allowed", problem.allowed());
      one.put("hint", problem.hint());
    }
  }

  /** Half up, to a number of decimals. */
  static BigDecimal round(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
  }
}
