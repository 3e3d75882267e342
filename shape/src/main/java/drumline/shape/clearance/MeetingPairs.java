package drumline.shape.clearance;

import drumline.shape.setting.PositionTools;
import drumline.shape.tool.ToolOutline;
import drumline.shape.tool.ToolPart;
import drumline.shape.tool.ToolPart.Role;
import drumline.shape.tool.ToolPlacing;
import drumline.shape.tool.WorkingTool;
import drumline.shop.machine.SlideKind;
import drumline.shop.operation.CutRegion.PointZr;
import drumline.shop.operation.Operation;
import drumline.shop.operation.PairRule;
import drumline.shop.operation.Route;
import drumline.shop.operation.WorkEnd;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Which tools would meet if they worked in one position at the same time: those that come across
 * the axis against those that face the work, wherever each of them is on its way.
 *
 * <p>Facing tools stand out as far as they must to keep their holders clear, and no farther than
 * they can. Known limit: two cross slides stand on different sides of the work, so their tools are
 * taken not to meet.
 */
public final class MeetingPairs {

  /** Rule whose pairs are found here. */
  public static final String RULE = "tools-meet";

  private static final double TOUCH_MM2 = 0.02;

  private MeetingPairs() {}

  /**
   * The route with its pairs of tools that meet found from their outlines, in place of those that
   * the route's own rule takes for granted.
   */
  public static Route found(Route route, Part part, Bar bar) {
    List<PairRule> pairs = new ArrayList<>();
    route.pairs().stream().filter(pair -> !pair.ruleId().equals(RULE)).forEach(pairs::add);
    pairs.addAll(of(route.operations(), part, bar));
    return new Route(route.operations(), route.orders(), pairs, route.problems());
  }

  /** The pairs that meet, each with the reason. */
  public static List<PairRule> of(List<Operation> operations, Part part, Bar bar) {
    List<Sweep> across = new ArrayList<>();
    List<Sweep> facing = new ArrayList<>();
    for (Operation operation : operations) {
      if (operation.end() != WorkEnd.BACK) {
        place(operation, SlideKind.CROSS, part, bar)
            .filter(tool -> tool.outline().side() == ToolOutline.Side.ACROSS)
            .ifPresent(tool -> across.add(Sweep.of(tool)));
        place(operation, SlideKind.END, part, bar)
            .filter(tool -> tool.outline().side() == ToolOutline.Side.ALONG)
            .ifPresent(tool -> facing.add(Sweep.of(tool)));
      }
    }
    List<PairRule> pairs = new ArrayList<>();
    for (Sweep cross : across) {
      for (Sweep end : facing) {
        if (!cross.tool().operation().id().equals(end.tool().operation().id())) {
          meet(cross, end, part, bar).ifPresent(pairs::add);
        }
      }
    }
    return pairs;
  }

  private static Optional<WorkingTool> place(
      Operation operation, SlideKind kind, Part part, Bar bar) {
    return operation.slides().contains(kind)
        ? Optional.of(ToolPlacing.of(operation, kind, part, bar))
        : Optional.empty();
  }

  private static Optional<PairRule> meet(Sweep cross, Sweep end, Part part, Bar bar) {
    double wantedMm = PositionTools.overhangPastMm(end.tool(), cross.tool());
    Sweep set =
        wantedMm > end.tool().overhangMm()
            ? Sweep.of(ToolPlacing.of(end.tool().operation(), SlideKind.END, part, bar, wantedMm))
            : end;
    for (Swept one : cross.parts()) {
      for (Swept other : set.parts()) {
        if (one.area().shared(other.area()).areaMm2() > TOUCH_MM2) {
          return Optional.of(
              new PairRule(
                  PairRule.Kind.NOT_TOGETHER,
                  cross.tool().operation().id(),
                  end.tool().operation().id(),
                  reason(one.role(), other.role(), set.tool()),
                  RULE));
        }
      }
    }
    return Optional.empty();
  }

  private record Swept(Role role, PlaneArea area) {}

  private record Sweep(WorkingTool tool, List<Swept> parts) {

    static Sweep of(WorkingTool tool) {
      List<PointZr> way = tool.path().corners();
      List<Swept> parts = new ArrayList<>();
      for (ToolPart part : tool.outline().parts()) {
        for (int i = 1; i < way.size(); i++) {
          parts.add(new Swept(part.role(), PlaneArea.swept(part, way.get(i - 1), way.get(i))));
        }
      }
      return new Sweep(tool, List.copyOf(parts));
    }
  }

  private static String reason(Role cross, Role end, WorkingTool facing) {
    return String.format(
        Locale.ROOT,
        "The %s of the tool across the axis and the %s of the one that faces the work sweep the"
            + " same place, with %.0f mm out of its holder; they do not cut together.",
        cross.words(),
        end.words(),
        facing.overhangMm());
  }
}
