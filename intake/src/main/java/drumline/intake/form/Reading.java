package drumline.intake.form;

import drumline.shop.problem.Problem;
import drumline.shop.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One run of reading: the problems found so far, and the unit system that each file declares. */
public final class Reading {

  private final List<Problem> problems = new ArrayList<>();
  private final Map<String, UnitSystem> systems = new HashMap<>();

  /** The problems, in the order found; grows as reading goes on. */
  public List<Problem> problems() {
    return problems;
  }

  /** Adds a problem, once. */
  public void add(Problem problem) {
    if (!problems.contains(problem)) {
      problems.add(problem);
    }
  }

  /** Whether anything stops the study. */
  public boolean hasErrors() {
    return problems.stream().anyMatch(p -> p.severity() == Problem.Severity.ERROR);
  }

  /** Notes the unit system that a file declares. */
  public void declare(String file, UnitSystem system) {
    systems.put(file, system);
  }

  /** The unit system that a file declares, if it does. */
  Optional<UnitSystem> findSystem(String file) {
    return Optional.ofNullable(systems.get(file));
  }
}
