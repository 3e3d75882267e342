package drumline.app.frozen;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.app.Examples;
import drumline.app.study.MachineStudy;
import drumline.app.study.PlannedLayout;
import drumline.cycle.timeline.OperationSpan;
import drumline.cycle.timeline.PositionTimeline;
import drumline.planner.check.Finding;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.assertj.core.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The examples' layouts, each as one line: our own output, frozen, so that a change of the layout
 * is seen and meant. To freeze anew, copy the line that the failing test shows into {@code
 * layouts.txt}.
 */
class ExampleLayoutsTest {

  static List<String> names() {
    return Examples.names();
  }

  @ParameterizedTest
  @MethodSource("names")
  void layoutIsTheFrozenLine(String name) throws IOException {
    Assumptions.assumeThat(Examples.study(name).plan().orElseThrow().notes())
        .as("a slow machine ended the search early, so another layout is right too")
        .noneMatch(note -> note.contains("The clock stopped"));
    assertThat(line(name)).isEqualTo(frozen(name));
  }

  @ParameterizedTest
  @MethodSource("names")
  void everyExampleIsAuditedAndProven(String name) {
    PlannedLayout plan = Examples.study(name).plan().orElseThrow();
    assertThat(plan.audit().findings()).allMatch(Finding::isPassed);
    assertThat(plan.proof().findings()).isEmpty();
    assertThat(plan.proof().holds()).isTrue();
    assertThat(plan.lowerBoundS()).isLessThanOrEqualTo(plan.timeline().cycleS());
    assertThat(plan.gapPct()).isBetween(0.0, 5.0);
  }

  @Test
  void mainExampleHasTheOperationsOfARichPiece() {
    assertThat(Examples.study("valve-seat-body.yaml").route().operations().size())
        .isBetween(25, 36);
  }

  private static String line(String name) {
    MachineStudy study = Examples.study(name);
    PlannedLayout plan = study.plan().orElseThrow();
    List<String> parts = new ArrayList<>();
    for (PositionTimeline position : plan.timeline().positions()) {
      parts.add(position.position() + ": " + ids(position));
    }
    PositionTimeline back = plan.timeline().back();
    if (back != null) {
      parts.add("back: " + ids(back));
    }
    return String.format(
        Locale.ROOT, "%s = %.2f s: %s", name, plan.timeline().cycleS(), String.join(" | ", parts));
  }

  private static String ids(PositionTimeline position) {
    return position.operations().stream()
        .map(OperationSpan::operationId)
        .collect(Collectors.joining(" "));
  }

  private static String frozen(String name) throws IOException {
    try (InputStream in = ExampleLayoutsTest.class.getResourceAsStream("layouts.txt")) {
      assertThat(in).as("layouts.txt").isNotNull();
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> line.startsWith(name + " = "))
          .findFirst()
          .orElse("no line for " + name);
    }
  }
}
