package drumline.app.ask;

import drumline.app.divide.DividedRoute;
import drumline.app.replan.QuickPlan;
import drumline.economics.triage.Triage;
import drumline.planner.api.PlannerSettings;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.inquiry.Pin;
import drumline.shop.machine.Machine;
import drumline.shop.operation.Route;
import drumline.shop.problem.Problem;
import drumline.shop.quantity.NearestWord;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.BooleanSupplier;

/**
 * What it would cost to have operations in other positions, found by planning again.
 *
 * @param machineName machine that was planned on
 * @param moves the moves in words
 * @param now the plan without the moves
 * @param then the plan with them
 * @param problems what is wrong with the question
 */
public record WhatIf(
    String machineName, String moves, QuickPlan now, QuickPlan then, List<Problem> problems) {
  private static final int WORKER_COUNT = 2;
  private static final QuickPlan NONE = new QuickPlan(0, 0, false, List.of());

  /** Copies the list. */
  public WhatIf {
    problems = List.copyOf(problems);
  }

  /**
   * An operation and the position that it should stand in.
   *
   * @param operationId the operation
   * @param position where to, 1…N, or N + 1 for back-working
   */
  public record Move(String operationId, int position) {}

  /**
   * Plans without and with the moves.
   *
   * @param machineNames the machine, else the inquiry's wish or the best fit
   * @param searchS effort of each of the two searches
   * @throws IllegalStateException if the inquiry has errors
   */
  public static WhatIf ask(
      Opened opened,
      List<String> machineNames,
      List<Move> moves,
      double searchS,
      BooleanSupplier cancelled) {
    Inquiry inquiry = opened.inquiry();
    ChooseMachines choice = ChooseMachines.of(inquiry, machineNames, Triage.of(inquiry, null));
    if (!choice.problems().isEmpty()) {
      return wrong("", choice.problems());
    }
    Machine machine = choice.machines().get(0);
    DividedRoute divided = DividedRoute.of(inquiry, machine);
    List<Problem> problems = new ArrayList<>();
    for (Move move : moves) {
      check(move, divided.route(), machine, problems);
    }
    if (divided.isWrong()) {
      problems.addAll(divided.whole().problems());
    }
    if (!problems.isEmpty()) {
      return wrong(machine.name(), problems);
    }
    PlannerSettings settings = new PlannerSettings(searchS, WORKER_COUNT, 1);
    List<Pin> own = inquiry.wishes().pins();
    List<Pin> all = new ArrayList<>(own);
    moves.forEach(move -> all.add(Pin.toPosition(move.operationId(), move.position())));
    return new WhatIf(
        machine.name(),
        String.join(
            ", ",
            moves.stream().map(m -> m.operationId() + " in position " + m.position()).toList()),
        QuickPlan.of(inquiry, machine, divided.route(), own, settings, cancelled::getAsBoolean),
        QuickPlan.of(inquiry, machine, divided.route(), all, settings, cancelled::getAsBoolean),
        List.of());
  }

  private static WhatIf wrong(String machineName, List<Problem> problems) {
    return new WhatIf(machineName, "", NONE, NONE, problems);
  }

  private static void check(Move move, Route route, Machine machine, List<Problem> problems) {
    int last = machine.lastPosition() + (machine.pickUp() == null ? 0 : 1);
    if (route.findOperation(move.operationId()).isEmpty()) {
      problems.add(unknown(move.operationId(), route));
    }
    if (move.position() < 1 || move.position() > last) {
      problems.add(
          Problem.error(
              "move-position",
              "--move " + move.operationId(),
              "position " + move.position(),
              "1 to " + last + " on " + machine.name(),
              ""));
    }
  }

  private static Problem unknown(String operationId, Route route) {
    List<String> known = route.operations().stream().map(o -> o.id()).toList();
    List<String> near = NearestWord.among(operationId, known, 3);
    return Problem.error(
        "move-operation",
        "--move",
        operationId,
        "an operation of the route; see drumline route",
        near.isEmpty() ? "" : "Maybe " + String.join(" or ", near) + ".");
  }

  /** Whether the question could be asked. */
  public boolean isAsked() {
    return problems.isEmpty();
  }

  /** The answer in a few lines. */
  public String text() {
    if (!now.isFeasible()) {
      return "No layout even without the move: " + reason(now);
    }
    String before =
        String.format(
            Locale.ROOT,
            "%s now: %.2f s%s",
            machineName,
            now.cycleS(),
            now.isProven()
                ? ", proven"
                : String.format(Locale.ROOT, ", bound %.2f s", now.boundS()));
    if (!then.isFeasible()) {
      return before + "\n" + moves + ": no layout; " + reason(then);
    }
    return before
        + String.format(
            Locale.ROOT,
            "%n%s: %.2f s%s, %+.2f s",
            moves,
            then.cycleS(),
            then.isProven()
                ? ", proven"
                : String.format(Locale.ROOT, ", bound %.2f s", then.boundS()),
            then.cycleS() - now.cycleS());
  }

  private static String reason(QuickPlan plan) {
    return String.join("; ", plan.obstacles().stream().map(Problem::found).toList());
  }
}
