package drumline.app.study;

import drumline.shop.inquiry.Inquiry;
import drumline.shop.machine.Machine;
import drumline.shop.operation.Route;
import drumline.shop.problem.Problem;
import java.util.List;
import java.util.Optional;

/**
 * An inquiry studied on one machine.
 *
 * @param inquiry the question
 * @param machine the machine
 * @param route operations, divided ones included
 * @param plan the layout; empty where none was found
 * @param problems what stands against it, or a person must look at
 */
public record MachineStudy(
    Inquiry inquiry,
    Machine machine,
    Route route,
    Optional<PlannedLayout> plan,
    List<Problem> problems) {

  /** Copies the list. */
  public MachineStudy {
    problems = List.copyOf(problems);
  }

  static MachineStudy planned(
      Inquiry inquiry, Machine machine, Route route, PlannedLayout plan, List<Problem> problems) {
    return new MachineStudy(inquiry, machine, route, Optional.of(plan), problems);
  }

  static MachineStudy unplanned(
      Inquiry inquiry, Machine machine, Route route, List<Problem> problems) {
    return new MachineStudy(inquiry, machine, route, Optional.empty(), problems);
  }

  /** Whether a layout was found. */
  public boolean isFeasible() {
    return plan.isPresent();
  }
}
