package drumline.drawing;

import drumline.cycle.timeline.Timeline;
import drumline.drawing.Walls.Stay;
import drumline.drawing.cost.CostBars;
import drumline.drawing.cost.Share;
import drumline.drawing.part.PartDrawing;
import drumline.drawing.part.PartSheet;
import drumline.drawing.strip.FilmStrip;
import drumline.drawing.svg.Look;
import drumline.drawing.tooling.DrumFront;
import drumline.drawing.tooling.ToolLayout;
import drumline.drawing.wall.CycleWall;
import drumline.drawing.wall.WallView;
import drumline.shape.workpiece.WorkpieceStates;
import drumline.shop.machine.Machine;
import drumline.shop.operation.Route;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** One drawing of each kind, and hard cases, for the tests and for looking at. */
public final class Gallery {

  private Gallery() {}

  public static Map<String, String> all() {
    PartSheet paper = new PartSheet(DrawingUnits.METRIC, Look.PAPER, Set.of());
    PartSheet marked = new PartSheet(DrawingUnits.INCH, Look.PAPER, Set.of("o3", "f1"));
    Map<String, String> all = new TreeMap<>();
    all.put("body", PartDrawing.svg(Pieces.stainlessBody(), Pieces.stainlessBar(), paper));
    all.put("body-inch", PartDrawing.svg(Pieces.stainlessBody(), Pieces.stainlessBar(), marked));
    all.put("nipple", PartDrawing.svg(Pieces.brassNipple(), Pieces.hexagonBar(), paper));
    all.put("sleeve", PartDrawing.svg(Pieces.sleeve(), Pieces.sleeveBar(), paper));
    all.put("knob", PartDrawing.svg(Pieces.knurledKnob(), Pieces.sleeveBar(), paper));
    all.put(
        "body-screen",
        PartDrawing.svg(Pieces.stainlessBody(), Pieces.stainlessBar(), DrawingUnits.METRIC));
    for (long seed : new long[] {1, 2, 3, 4, 5, 6, 7, 8}) {
      RandomPrints prints = new RandomPrints(seed);
      all.put("random-" + seed, PartDrawing.svg(prints.part(), prints.bar(), paper));
    }
    all.putAll(walls());
    all.putAll(tooling());
    return all;
  }

  private static Map<String, String> tooling() {
    Map<String, String> all = new TreeMap<>();
    add(all, "tooling", ToolLayout.svgs(Tooled.body(DrawingUnits.METRIC, Look.PAPER)));
    add(all, "tooling-inch", ToolLayout.svgs(Tooled.body(DrawingUnits.INCH, Look.PAPER)));
    add(all, "tooling-busy", ToolLayout.svgs(Tooled.busy(Look.PAPER)));
    all.put("drum", DrumFront.svg(Tooled.body(DrawingUnits.METRIC, Look.PAPER)));
    all.put("drum-busy", DrumFront.svg(Tooled.busy(Look.PAPER)));
    all.put("drum-screen", DrumFront.svg(Tooled.body(DrawingUnits.METRIC, Look.SCREEN)));
    return all;
  }

  private static void add(Map<String, String> all, String name, List<String> sheets) {
    for (int i = 0; i < sheets.size(); i++) {
      all.put(name + "-" + (i + 1), sheets.get(i));
    }
  }

  private static Map<String, String> walls() {
    Map<String, String> all = new TreeMap<>();
    Machine six = Walls.machine(6, 2);
    List<Stay> body = Works.valveBody();
    WorkpieceStates states = Walls.states(six, body, Pieces.stainlessBar(), Pieces.stainlessBody());
    Timeline time = Walls.timeline(six, body, 0.8);
    Route route = Walls.route(body);
    all.put("wall-body", CycleWall.svg(time, route, six, states.positions(), WallView.paper()));
    all.put("wall-screen", CycleWall.svg(time, route, six, states.positions()));
    all.put("strip", FilmStrip.svg("Valve body", states, Look.PAPER));
    all.put("cost", CostBars.svg(shares(), "EUR", new BigDecimal("0.71"), Look.PAPER));
    Machine eight = Walls.machine(8, 3);
    List<Stay> busy = Works.random(5, 8, 3, 38, "");
    all.put("wall-eight", wall(eight, busy));
    List<Stay> wordy = Works.random(7, 8, 3, 34, " along the whole outside contour & <chamfer>");
    all.put("wall-long", wall(eight, wordy));
    all.put("wall-few", wall(six, Works.random(3, 6, 2, 6, " × 12")));
    return all;
  }

  public static List<Share> shares() {
    return List.of(
        new Share("material", new BigDecimal("0.1840")),
        new Share("machine", new BigDecimal("0.1120")),
        new Share("labour", new BigDecimal("0.0610")),
        new Share("tools", new BigDecimal("0.0385")),
        new Share("set-up", new BigDecimal("0.0214")),
        new Share("energy & oil <mist>", new BigDecimal("0.0093")),
        new Share("chips sold", new BigDecimal("-0.0312")));
  }

  private static String wall(Machine machine, List<Stay> stays) {
    return CycleWall.svg(
        Walls.timeline(machine, stays, 0.6),
        Walls.route(stays),
        machine,
        List.of(),
        WallView.paper());
  }
}
