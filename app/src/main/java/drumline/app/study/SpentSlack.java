package drumline.app.study;

import drumline.app.layout.EdgeCost;
import drumline.cycle.clock.CycleClock;
import drumline.cycle.spindle.GripDiameters;
import drumline.planner.slack.DrivenTools;
import drumline.planner.slack.FreeSpeeds;
import drumline.planner.slack.Levelling;
import drumline.planner.slack.SlackSpending;
import drumline.planner.translate.SpeedRefinement;
import drumline.planner.translate.Translation;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.inquiry.Pin;
import drumline.shop.layout.Layout;
import drumline.shop.machine.Machine;
import drumline.shop.operation.Route;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A planned layout whose spare time has been turned into tool life, the cycle as it was.
 *
 * @param route the route, driven tools slowed
 * @param layout places and speeds
 */
record SpentSlack(Route route, Layout layout) {

  static SpentSlack of(
      Inquiry inquiry,
      Machine machine,
      Route route,
      Translation translation,
      drumline.planner.model.Layout planned) {
    GripDiameters diameters = GripDiameters.of(inquiry.part(), inquiry.bar());
    Set<String> speeds = pinnedSpeeds(inquiry);
    Set<String> anywhere =
        inquiry.wishes().pins().stream()
            .map(Pin::operationId)
            .collect(Collectors.toUnmodifiableSet());
    CycleClock clock = new CycleClock(route, machine, diameters);
    EdgeCost edges = new EdgeCost(inquiry, machine);
    Layout fastest =
        SpeedRefinement.refine(route, machine, diameters, translation.layout(planned), speeds);
    Layout level = Levelling.level(translation.problem(), clock, fastest, anywhere);
    Layout slowed = SlackSpending.spend(route, machine, clock, level, edges, speeds);
    Layout layout = FreeSpeeds.settle(route, clock, slowed);
    double cycleS = clock.timeline(layout).cycleS();
    return new SpentSlack(
        DrivenTools.slow(route, machine, diameters, layout, edges, speeds, cycleS), layout);
  }

  /** Operations whose speed the user has fixed. */
  static Set<String> pinnedSpeeds(Inquiry inquiry) {
    return inquiry.wishes().pins().stream()
        .filter(pin -> pin.spindleRevPerMin().isPresent())
        .map(Pin::operationId)
        .collect(Collectors.toUnmodifiableSet());
  }
}
