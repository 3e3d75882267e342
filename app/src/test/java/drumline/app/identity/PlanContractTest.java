package drumline.app.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import drumline.app.Examples;
import drumline.app.ask.OpenInquiry;
import drumline.app.ask.PlanInquiry;
import drumline.app.ask.SearchWatch;
import drumline.app.ask.ShowSchema;
import drumline.app.json.PlanJson;
import drumline.app.study.MachineStudy;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * {@code plan.json} keeps its contract; checked with com.networknt:json-schema-validator 2.0.8
 * against JSON Schema 2020-12.
 */
class PlanContractTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  static List<String> names() {
    return Examples.names();
  }

  @ParameterizedTest
  @MethodSource("names")
  void exampleKeepsTheSchema(String name) {
    assertThat(faults(PlanJson.text(Examples.study(name)))).isEmpty();
  }

  @Test
  void studyWithoutLayoutKeepsTheSchema() throws IOException {
    String text = PlanJson.text(unplannable());
    assertThat(faults(text)).isEmpty();
    JsonNode plan = MAPPER.readTree(text);
    assertThat(plan.get("feasible").booleanValue()).isFalse();
    assertThat(plan.get("cycle").isNull()).isTrue();
    assertThat(plan.get("positions")).isEmpty();
    assertThat(plan.get("audit").get("passed").booleanValue()).isFalse();
    assertThat(plan.get("problems")).anyMatch(p -> p.get("severity").asText().equals("error"));
  }

  /** The schema bites: without this, one that accepts everything would pass. */
  @Test
  void schemaRefusesATimeBelowZeroAndAKeyTooMany() {
    String text = PlanJson.text(Examples.study("sleeve.yaml"));
    assertThat(faults(text.replaceFirst("\"indexS\" : ", "\"indexS\" : -"))).isNotEmpty();
    assertThat(faults(text.replaceFirst("\"feasible\"", "\"feasable\""))).isNotEmpty();
  }

  @ParameterizedTest
  @MethodSource("names")
  void everyPromisedKeyIsThere(String name) throws IOException {
    JsonNode plan = plan(name);
    holds(
        plan,
        "schema inquiry machine feasible cycle positions backWorking output cost audit problems");
    holds(
        plan.get("cycle"),
        "cycleS indexS governingPosition lowerBoundS gapPct provenOptimal piecesPerIndex"
            + " planningWallMs");
    holds(plan.get("output"), "grossPerHour netPerHour piecesPerBar barYieldPct machinesNeeded");
    holds(plan.get("cost"), "currency perPiece shares todayPerPiece paybackMonths");
    holds(plan.get("audit"), "passed checks");
    for (JsonNode position : plan.get("positions")) {
      holds(position, "position timeS operations");
    }
    assertThat(operations(plan)).isNotEmpty();
    for (JsonNode operation : operations(plan)) {
      holds(
          operation,
          "id feature kind slide startS endS spindleRevPerMin cuttingSpeedMPerMin feedMmPerRev"
              + " forceN torqueNm powerKw toolLifePieces sources");
      assertThat(operation.get("sources")).isNotEmpty();
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void everyOperationStandsOnceWithinTheCycle(String name) throws IOException {
    JsonNode plan = plan(name);
    double workS = plan.get("cycle").get("cycleS").doubleValue();
    List<String> ids = new ArrayList<>();
    for (JsonNode operation : operations(plan)) {
      ids.add(operation.get("id").asText());
      double startS = operation.get("startS").doubleValue();
      double endS = operation.get("endS").doubleValue();
      assertThat(endS).as(operation.get("id").asText()).isGreaterThan(startS);
      assertThat(endS).as(operation.get("id").asText()).isLessThanOrEqualTo(workS + 0.001);
    }
    assertThat(ids)
        .doesNotHaveDuplicates()
        .hasSameSizeAs(Examples.study(name).route().operations());
  }

  @ParameterizedTest
  @MethodSource("names")
  void figuresAgreeWithEachOther(String name) throws IOException {
    JsonNode plan = plan(name);
    JsonNode cycle = plan.get("cycle");
    double perHour =
        3600 * cycle.get("piecesPerIndex").doubleValue() / cycle.get("cycleS").doubleValue();
    assertThat(plan.get("output").get("grossPerHour").doubleValue())
        .isCloseTo(perHour, within(0.001 * perHour));
    double sum = 0;
    for (JsonNode share : plan.get("cost").get("shares")) {
      sum += share.doubleValue();
    }
    assertThat(sum).isCloseTo(plan.get("cost").get("perPiece").doubleValue(), within(0.001));
  }

  /** A bar of 26 mm on a machine that takes 22 mm. */
  private static MachineStudy unplannable() {
    return PlanInquiry.plan(
            OpenInquiry.example("valve-seat-body.yaml"),
            List.of("drum-8x22"),
            1,
            1,
            SearchWatch.silent())
        .studies()
        .get(0);
  }

  private static List<JsonNode> operations(JsonNode plan) {
    List<JsonNode> operations = new ArrayList<>();
    plan.get("positions").forEach(p -> p.get("operations").forEach(operations::add));
    if (plan.get("backWorking").isObject()) {
      plan.get("backWorking").get("operations").forEach(operations::add);
    }
    return operations;
  }

  private static void holds(JsonNode node, String keys) {
    for (String key : keys.split(" ", -1)) {
      assertThat(node.has(key)).as(key).isTrue();
    }
  }

  private static JsonNode plan(String name) throws IOException {
    return MAPPER.readTree(PlanJson.text(Examples.study(name)));
  }

  private static List<Error> faults(String json) {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(ShowSchema.text(ShowSchema.Form.PLAN), InputFormat.JSON)
        .validate(json, InputFormat.JSON);
  }
}
