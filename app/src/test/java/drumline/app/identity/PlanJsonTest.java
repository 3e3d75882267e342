package drumline.app.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import drumline.app.Examples;
import drumline.app.ask.ShowSchema;
import drumline.app.json.PlanJson;
import drumline.app.study.MachineStudy;
import drumline.shop.problem.Problem;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PlanJsonTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  static List<String> names() {
    return Examples.names();
  }

  @ParameterizedTest
  @MethodSource("names")
  void planKeepsItsSchema(String name) throws IOException {
    assertThat(SchemaCheck.faults(ShowSchema.text(ShowSchema.Form.PLAN), plan(name).toString()))
        .isEmpty();
  }

  @ParameterizedTest
  @MethodSource("names")
  void planWithoutALayoutKeepsItsSchemaToo(String name) {
    MachineStudy study = Examples.study(name);
    Problem problem = Problem.error("no-layout", "here", "nothing", "something", "");
    String text =
        PlanJson.text(
            new MachineStudy(
                study.inquiry(),
                study.machine(),
                study.route(),
                Optional.empty(),
                List.of(problem)));
    assertThat(SchemaCheck.faults(ShowSchema.text(ShowSchema.Form.PLAN), text)).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("names")
  void everyOperationStandsOnceAndEndsAfterItBegins(String name) throws IOException {
    List<String> ids = new ArrayList<>();
    JsonNode plan = plan(name);
    List<JsonNode> places = new ArrayList<>();
    plan.get("positions").forEach(places::add);
    if (plan.get("backWorking").isObject()) {
      places.add(plan.get("backWorking"));
    }
    for (JsonNode place : places) {
      for (JsonNode operation : place.get("operations")) {
        ids.add(operation.get("id").asText());
        assertThat(operation.get("endS").asDouble())
            .isGreaterThan(operation.get("startS").asDouble());
        assertThat(operation.get("sources")).isNotEmpty();
      }
    }
    assertThat(ids)
        .doesNotHaveDuplicates()
        .hasSize(Examples.study(name).route().operations().size());
  }

  @ParameterizedTest
  @MethodSource("names")
  void sharesAddUpToThePieceCost(String name) throws IOException {
    JsonNode cost = plan(name).get("cost");
    double sum = 0;
    for (JsonNode share : cost.get("shares")) {
      sum += share.asDouble();
    }
    assertThat(sum).isCloseTo(cost.get("perPiece").asDouble(), within(0.001));
  }

  private static JsonNode plan(String name) throws IOException {
    return MAPPER.readTree(PlanJson.text(Examples.study(name)));
  }
}
