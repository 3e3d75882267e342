package drumline.app;

import drumline.app.ask.OpenInquiry;
import drumline.app.ask.PlanInquiry;
import drumline.app.ask.SearchWatch;
import drumline.app.study.MachineStudy;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The shipped examples, each planned once for all tests. */
public final class Examples {
  private static final double SEARCH_S = 4;
  private static final Map<String, PlanInquiry> PLANNED = new ConcurrentHashMap<>();

  private Examples() {}

  /** Names of the examples, as the program ships them. */
  public static List<String> names() {
    return List.of("valve-seat-body.yaml", "hex-coupling.yaml", "sleeve.yaml");
  }

  /** An example planned on the machine that it wishes for. */
  public static PlanInquiry planned(String name) {
    return PLANNED.computeIfAbsent(
        name,
        n ->
            PlanInquiry.plan(OpenInquiry.example(n), List.of(), SEARCH_S, 1, SearchWatch.silent()));
  }

  /** The study of an example. */
  public static MachineStudy study(String name) {
    return planned(name).studies().get(0);
  }
}
