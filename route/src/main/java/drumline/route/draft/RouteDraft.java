package drumline.route.draft;

import drumline.route.rule.Practice;
import drumline.route.rule.RuleBook;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.material.CuttingProcess;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.OrderRule;
import drumline.shop.operation.PairRule;
import drumline.shop.operation.Route;
import drumline.shop.problem.Problem;
import drumline.shop.tooling.Tool;
import drumline.shop.tooling.ToolKind;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** A route while the rules write it: operations first, then what binds them. */
public final class RouteDraft {
  private final Inquiry inquiry;
  private final Practice practice;
  private final ToolCrib crib;
  private final List<Operation> operations = new ArrayList<>();
  private final Set<String> leftOut = new HashSet<>();
  private final List<OrderRule> orders = new ArrayList<>();
  private final List<PairRule> pairs = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();

  /** An empty route for an inquiry. */
  public RouteDraft(Inquiry inquiry, Practice practice) {
    this.inquiry = inquiry;
    this.practice = practice;
    this.crib = new ToolCrib(inquiry.tools(), inquiry.material());
  }

  /** The question that the route answers. */
  public Inquiry inquiry() {
    return inquiry;
  }

  /** A stock allowance, standard time or limit, in the unit of its table. */
  public double allowance(String name) {
    return practice.allowances().value(name);
  }

  /** How the shop works. */
  public Practice practice() {
    return practice;
  }

  /** Whether a rule is used. */
  public boolean uses(String ruleId) {
    return practice.uses(ruleId);
  }

  /** A tool for a process; a problem is noted, and nothing found, if the libraries have none. */
  public Optional<ToolChoice> tool(
      String feature, ToolKind kind, CuttingProcess process, double sizeMm) {
    Optional<ToolChoice> choice = crib.find(feature, kind, process, sizeMm);
    if (choice.isEmpty()) {
      problems.add(
          Problem.error(
              "no-tool",
              feature,
              String.format(Locale.ROOT, "no %s of %.2f mm", words(kind), sizeMm),
              "a tool family that covers the size, with cutting values for "
                  + words(process)
                  + " in "
                  + inquiry.material().name(),
              "Maybe add the family to a tool file or the values to a material file."));
    }
    return choice;
  }

  /** A tool that needs no cutting values, such as a brush; a problem is noted if there is none. */
  public Optional<Tool> plainTool(String feature, ToolKind kind, double sizeMm) {
    Optional<Tool> tool = crib.findTool(kind, sizeMm);
    if (tool.isEmpty()) {
      problems.add(
          Problem.error(
              "no-tool",
              feature,
              String.format(Locale.ROOT, "no %s of %.2f mm", words(kind), sizeMm),
              "a tool family that covers the size",
              "Maybe add the family to a tool file."));
    }
    return tool;
  }

  /** The tools at hand. */
  public ToolCrib crib() {
    return crib;
  }

  /** Adds an operation unless the user left it out. */
  public void add(Operation operation) {
    if (inquiry.wishes().leaveOut().contains(operation.id())) {
      leftOut.add(operation.id());
    } else {
      operations.add(operation);
    }
  }

  /** Operations that the print asks for and the user left out, by id. */
  public Set<String> leftOut() {
    return Set.copyOf(leftOut);
  }

  /** Asks that one operation comes before another; nothing happens if either is not there. */
  public void order(Operation before, Operation after, String ruleId) {
    boolean known =
        orders.stream()
            .anyMatch(o -> o.beforeId().equals(before.id()) && o.afterId().equals(after.id()));
    if (!known && uses(ruleId) && !before.id().equals(after.id())) {
      orders.add(new OrderRule(before.id(), after.id(), RuleBook.rule(ruleId).text(), ruleId));
    }
  }

  /** Asks every operation of one list to come before every one of another. */
  public void orderAll(List<Operation> before, List<Operation> after, String ruleId) {
    for (Operation one : before) {
      for (Operation other : after) {
        order(one, other, ruleId);
      }
    }
  }

  /** Notes a rule between two operations. */
  public void pair(PairRule.Kind kind, Operation one, Operation other, String ruleId) {
    if (uses(ruleId)) {
      pairs.add(new PairRule(kind, one.id(), other.id(), RuleBook.rule(ruleId).text(), ruleId));
    }
  }

  /** Takes an order of the user's own. */
  public void userOrder(OrderRule order) {
    orders.add(order);
  }

  /** Notes a problem. */
  public void problem(Problem problem) {
    problems.add(problem);
  }

  /** The operations that meet a condition, in the order they were added. */
  public List<Operation> where(Predicate<Operation> condition) {
    return operations.stream().filter(condition).toList();
  }

  /** The operations of some kinds on one feature. */
  public List<Operation> of(String featureId, OperationKind... kinds) {
    List<OperationKind> wanted = List.of(kinds);
    return where(
        o -> o.featureId().equals(featureId) && (wanted.isEmpty() || wanted.contains(o.kind())));
  }

  /** The finished route. */
  public Route toRoute() {
    return new Route(operations, orders, pairs, problems);
  }

  private static String words(Enum<?> name) {
    return name.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
