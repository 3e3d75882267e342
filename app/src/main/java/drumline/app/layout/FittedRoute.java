package drumline.app.layout;

import drumline.route.RouteDerivation;
import drumline.route.feature.TurnedPart;
import drumline.route.machine.MachineRoute;
import drumline.route.rule.Practice;
import drumline.route.rule.PracticeReading;
import drumline.shape.clearance.MeetingPairs;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.inquiry.Pin;
import drumline.shop.machine.Machine;
import drumline.shop.operation.PairRule;
import drumline.shop.operation.Route;
import drumline.shop.part.Part;
import java.util.ArrayList;
import java.util.List;

/** The route of an inquiry fitted to a machine, by the practice of the shop that asks. */
public final class FittedRoute {
  private FittedRoute() {}

  /** The route, with tools that would meet kept apart and with what the user wants together. */
  public static Route of(Inquiry inquiry, Machine machine) {
    Practice practice = practice(inquiry);
    Route adapted =
        MachineRoute.adapt(
            RouteDerivation.derive(inquiry, practice), machine, inquiry, practice.allowances());
    return together(
        MeetingPairs.found(adapted, TurnedPart.of(inquiry, practice), inquiry.bar()),
        inquiry.wishes().pins());
  }

  /** The part as it leaves turning, before what is not turned. */
  public static Part turned(Inquiry inquiry) {
    return TurnedPart.of(inquiry, practice(inquiry));
  }

  /** Allowances, capability and rules with the inquiry's own figures. */
  public static Practice practice(Inquiry inquiry) {
    return PracticeReading.of(inquiry.overrides()).practice();
  }

  private static Route together(Route route, List<Pin> pins) {
    List<PairRule> pairs = new ArrayList<>(route.pairs());
    for (Pin pin : pins) {
      if (!pin.togetherWith().isEmpty()) {
        pairs.add(
            new PairRule(
                PairRule.Kind.SAME_POSITION,
                pin.operationId(),
                pin.togetherWith(),
                "as the user asks",
                "user"));
      }
    }
    return new Route(route.operations(), route.orders(), pairs, route.problems());
  }
}
