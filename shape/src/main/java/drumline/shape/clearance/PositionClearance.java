package drumline.shape.clearance;

import drumline.shape.clearance.Meeting.Kind;
import drumline.shape.section.HalfSection;
import drumline.shape.setting.PositionTools;
import drumline.shape.setting.SetTool;
import drumline.shape.tool.ToolOutline;
import drumline.shape.tool.ToolPart;
import drumline.shape.tool.ToolPart.Role;
import drumline.shape.workpiece.Removal;
import drumline.shop.machine.SlideKind;
import drumline.shop.operation.OperationKind;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Envelope;

/** Looks at one position: each tool against the work, what holds it, and the other tools. */
final class PositionClearance {

  private static final int SAMPLES = 16;
  private static final double TOUCH_MM2 = 0.02;
  private static final Set<OperationKind> FORMING =
      EnumSet.of(OperationKind.THREAD_TURN, OperationKind.THREAD_ROLL, OperationKind.KNURL);

  private final PositionTools tools;
  private final List<Meeting> meetings = new ArrayList<>();
  private final List<String> crossSlides;
  private int pairCount;

  PositionClearance(PositionTools tools) {
    this.tools = tools;
    this.crossSlides =
        List.copyOf(
            new TreeSet<>(
                tools.tools().stream()
                    .filter(tool -> tool.slide().kind() == SlideKind.CROSS)
                    .map(tool -> tool.slide().id())
                    .toList()));
  }

  List<Meeting> meetings() {
    return meetings;
  }

  int pairCount() {
    return pairCount;
  }

  /** Bodies and holders against the work as it is when a tool comes, less what it takes itself. */
  void work(HalfSection arrives, List<Removal> removals) {
    for (SetTool tool : tools.tools()) {
      HalfSection now = arrives;
      for (SetTool before : tools.tools()) {
        if (before.equals(tool) || before.times().clearS() <= tool.times().startS() + 1e-9) {
          now = now.subtract(swept(before, removals));
        }
      }
      PlaneArea body = PlaneArea.of(now);
      Set<Role> roles = EnumSet.of(Role.SHANK, Role.HOLDER);
      look(tool, roles, allTimes(tool), atS -> body, "the workpiece", Kind.TOOL_AND_WORK);
    }
  }

  private static HalfSection swept(SetTool tool, List<Removal> removals) {
    return removals.stream()
        .filter(removal -> removal.operationId().equals(tool.operation().id()))
        .map(Removal::swept)
        .findFirst()
        .orElse(HalfSection.EMPTY);
  }

  /** Cutting parts of turning work against what must remain. */
  void piece(HalfSection piece) {
    PlaneArea body = PlaneArea.of(piece);
    for (SetTool tool : tools.tools()) {
      boolean turns = !tool.operation().removes().isEmpty();
      if (turns && !FORMING.contains(tool.operation().kind())) {
        List<Double> times = between(tool.times().cutS(), tool.times().clearS());
        look(
            tool,
            EnumSet.of(Role.EDGE),
            times,
            atS -> body,
            "the finished piece",
            Kind.EDGE_AND_PIECE);
      }
    }
  }

  /** Everything of a tool against something that holds the work, which may move. */
  void holding(DoubleFunction<Optional<PlaneArea>> bodyAt, String name) {
    for (SetTool tool : tools.tools()) {
      look(
          tool,
          EnumSet.allOf(Role.class),
          allTimes(tool),
          atS -> bodyAt.apply(atS).orElse(null),
          name,
          Kind.TOOL_AND_HOLDING);
    }
  }

  /** Tools of different slides that are out at the same time. */
  void eachOther() {
    List<SetTool> all = tools.tools();
    for (int i = 0; i < all.size(); i++) {
      for (int j = i + 1; j < all.size(); j++) {
        SetTool one = all.get(i);
        SetTool other = all.get(j);
        boolean isSameSlide = one.slide().id().equals(other.slide().id());
        if (!isSameSlide && one.times().overlaps(other.times())) {
          pairCount++;
          pair(one, other).ifPresent(meetings::add);
        }
      }
    }
  }

  private Optional<Meeting> pair(SetTool one, SetTool other) {
    double fromS = Math.max(one.times().startS(), other.times().startS());
    double toS = Math.min(one.times().endS(), other.times().endS());
    TreeSet<Double> times = new TreeSet<>(allTimes(one));
    times.addAll(allTimes(other));
    Meeting worst = null;
    for (double atS : times) {
      if (fromS <= atS && atS <= toS) {
        for (ToolPart part : other.partsAt(atS)) {
          PlaneArea area = placed(other, part);
          Meeting met = worst(one, EnumSet.allOf(Role.class), atS, area, name(other, part.role()));
          worst = larger(worst, met, Kind.TOOLS);
        }
      }
    }
    return Optional.ofNullable(worst);
  }

  private interface BodyAt {
    @Nullable PlaneArea at(double atS);
  }

  private void look(
      SetTool tool, Set<Role> roles, List<Double> times, BodyAt body, String name, Kind kind) {
    pairCount++;
    Meeting worst = null;
    for (double atS : times) {
      PlaneArea area = body.at(atS);
      if (area != null) {
        worst = larger(worst, worst(tool, roles, atS, area, name), kind);
      }
    }
    if (worst != null) {
      meetings.add(worst);
    }
  }

  private static @Nullable Meeting larger(
      @Nullable Meeting one, @Nullable Meeting other, Kind kind) {
    if (other == null || (one != null && one.areaMm2() >= other.areaMm2())) {
      return one;
    }
    return new Meeting(
        kind,
        other.position(),
        other.one(),
        other.other(),
        other.atS(),
        other.fromZMm(),
        other.toZMm(),
        other.nearRMm(),
        other.farRMm(),
        other.areaMm2());
  }

  private @Nullable Meeting worst(
      SetTool tool, Set<Role> roles, double atS, PlaneArea body, String name) {
    Meeting worst = null;
    for (ToolPart part : tool.partsAt(atS)) {
      if (roles.contains(part.role())) {
        PlaneArea shared = placed(tool, part).shared(body);
        if (shared.areaMm2() > TOUCH_MM2 && (worst == null || shared.areaMm2() > worst.areaMm2())) {
          worst = meeting(tool, part.role(), atS, shared, name);
        }
      }
    }
    return worst;
  }

  private Meeting meeting(SetTool tool, Role role, double atS, PlaneArea shared, String name) {
    Envelope box = shared.box();
    double near =
        box.getMinY() <= 0 && box.getMaxY() >= 0
            ? 0
            : Math.min(Math.abs(box.getMinY()), Math.abs(box.getMaxY()));
    return new Meeting(
        Kind.TOOLS,
        tools.position(),
        name(tool, role),
        name,
        atS,
        box.getMinX(),
        box.getMaxX(),
        near,
        Math.max(Math.abs(box.getMinY()), Math.abs(box.getMaxY())),
        shared.areaMm2());
  }

  private static String name(SetTool tool, Role role) {
    return role.words() + " of " + tool.number() + " (" + tool.operation().title() + ")";
  }

  /** The second cross slide's tools come from the other side. */
  private PlaneArea placed(SetTool tool, ToolPart part) {
    boolean isSecond =
        tool.tool().outline().side() == ToolOutline.Side.ACROSS
            && crossSlides.indexOf(tool.slide().id()) == 1;
    PlaneArea area = PlaneArea.of(part);
    return isSecond ? area.mirrored() : area;
  }

  private static List<Double> allTimes(SetTool tool) {
    TreeSet<Double> times = new TreeSet<>();
    times.addAll(between(tool.times().startS(), tool.times().cutS()));
    times.addAll(between(tool.times().cutS(), tool.times().clearS()));
    times.addAll(between(tool.times().clearS(), tool.times().endS()));
    return List.copyOf(times);
  }

  private static List<Double> between(double fromS, double toS) {
    List<Double> times = new ArrayList<>();
    for (int i = 0; i <= SAMPLES; i++) {
      times.add(fromS + (toS - fromS) * i / SAMPLES);
    }
    return times;
  }
}
