package drumline.app.ask;

import drumline.economics.triage.Triage;
import drumline.economics.triage.Verdict;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.machine.Machine;
import drumline.shop.problem.Problem;
import drumline.shop.quantity.NearestWord;
import java.util.ArrayList;
import java.util.List;

/**
 * Machines that an inquiry is planned on: those named, else those of the inquiry's wishes, else the
 * drum that fits best.
 *
 * @param machines machines with a drum, in the order asked
 * @param problems names that are not in the library, or have no drum
 */
public record ChooseMachines(List<Machine> machines, List<Problem> problems) {

  /** Word that stands for every machine with a drum. */
  public static final String ALL = "all";

  /** Copies the lists. */
  public ChooseMachines {
    machines = List.copyOf(machines);
    problems = List.copyOf(problems);
  }

  /** The choice for an inquiry; names may be empty. */
  public static ChooseMachines of(Inquiry inquiry, List<String> names, Triage triage) {
    List<String> wanted = names.isEmpty() ? inquiry.wishes().machines() : names;
    if (wanted.isEmpty()) {
      return best(inquiry, triage);
    }
    if (wanted.contains(ALL)) {
      return new ChooseMachines(
          inquiry.machines().stream().filter(m -> m.kind() == Machine.Kind.DRUM).toList(),
          List.of());
    }
    List<Machine> machines = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (String name : wanted) {
      inquiry.machines().stream()
          .filter(machine -> machine.name().equals(name))
          .findFirst()
          .ifPresentOrElse(
              machine -> add(machine, machines, problems),
              () -> problems.add(unknown(inquiry, name)));
    }
    return new ChooseMachines(machines, problems);
  }

  private static void add(Machine machine, List<Machine> machines, List<Problem> problems) {
    if (machine.kind() == Machine.Kind.DRUM) {
      machines.add(machine);
    } else {
      problems.add(
          Problem.error(
              "no-drum",
              "machine",
              machine.name() + " has no spindle drum",
              "a machine of kind drum",
              "Maybe leave it out: machines without a drum are compared in every study."));
    }
  }

  private static Problem unknown(Inquiry inquiry, String name) {
    List<String> known = inquiry.machines().stream().map(Machine::name).toList();
    List<String> near = NearestWord.among(name, known, 3);
    return Problem.error(
        "unknown-machine",
        "machine",
        name,
        String.join(", ", known),
        near.isEmpty() ? "" : "Maybe " + String.join(" or ", near) + ".");
  }

  private static ChooseMachines best(Inquiry inquiry, Triage triage) {
    for (var fit : triage.machines()) {
      for (Machine machine : inquiry.machines()) {
        if (machine.name().equals(fit.machineName())
            && machine.kind() == Machine.Kind.DRUM
            && fit.verdict() != Verdict.DOES_NOT_FIT) {
          return new ChooseMachines(List.of(machine), List.of());
        }
      }
    }
    return new ChooseMachines(
        List.of(),
        List.of(
            Problem.error(
                "no-machine-fits",
                "machine",
                "no machine of the library takes the piece",
                "one whose bar capacity, length and equipment suffice",
                "Maybe see drumline triage for the rule that each one breaks.")));
  }
}
