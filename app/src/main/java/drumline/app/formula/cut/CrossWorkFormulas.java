package drumline.app.formula.cut;

import static drumline.app.formula.Allowed.ABOVE_0;
import static drumline.app.formula.Allowed.ANY;
import static drumline.app.formula.Allowed.FROM_0;
import static drumline.app.formula.Allowed.aboveTo;
import static drumline.app.formula.Allowed.atLeast;
import static drumline.app.formula.Allowed.between;
import static drumline.app.formula.Measure.ANGLE;
import static drumline.app.formula.Measure.ANGULAR_GAIN;
import static drumline.app.formula.Measure.COUNT;
import static drumline.app.formula.Measure.FEED;
import static drumline.app.formula.Measure.LENGTH;
import static drumline.app.formula.Measure.MICRON;
import static drumline.app.formula.Measure.ROTATION;
import static drumline.app.formula.Measure.SECONDS;
import static drumline.app.formula.Measure.SLIDE_FEED;
import static drumline.app.formula.Measure.SPEED;
import static drumline.app.formula.Measure.TEXT;
import static drumline.app.formula.Topic.LIVE_TOOLS;

import drumline.app.formula.Answer;
import drumline.app.formula.Formula;
import drumline.app.formula.FormulaDraft;
import drumline.app.formula.Values;
import drumline.cutting.lettering.Lettering;
import drumline.cutting.lettering.StrokeFont;
import drumline.cutting.livetool.ContourPass;
import drumline.cutting.livetool.CrossFlats;
import drumline.cutting.livetool.CrossHole;
import drumline.cutting.livetool.FaceHoles;
import drumline.cutting.livetool.FlatWidth;
import drumline.cutting.livetool.PolarFlat;
import drumline.cutting.livetool.PolygonTurning;
import drumline.cutting.livetool.SaddleEdge;
import java.util.List;

/** Flats, polygons, cross holes, paths and letters with live tools. */
final class CrossWorkFormulas {
  private static final String HOLD = "; 0.2 to 0.5 s to orient and clamp from memory";

  private CrossWorkFormulas() {}

  static List<Formula> all() {
    return List.of(
        flat(),
        side(),
        flats(),
        polar(),
        polygon(),
        crossHole(),
        faceHoles(),
        contour(),
        saddle(),
        engraving());
  }

  private static FormulaDraft draft(String name, String title) {
    return Formula.named(LIVE_TOOLS, name, title);
  }

  private static FormulaDraft hold(FormulaDraft draft) {
    return draft.in("hold", SECONDS, "time to orient, clamp and unclamp", FROM_0, "0.4 s");
  }

  private static Formula flat() {
    return draft("flat-width", "width of a flat on round stock")
        .law("w = 2·√(R² − d²)")
        .in("diameter", LENGTH, "diameter 2R", ABOVE_0)
        .in("distance", LENGTH, "distance d of the flat from the axis", FROM_0)
        .source("geometry")
        .example("diameter=20mm distance=8.5mm")
        .by(
            v ->
                Answer.of(
                    "width w", LENGTH, FlatWidth.widthMm(v.num("diameter"), v.num("distance"))),
            FlatWidth.class);
  }

  private static Formula side() {
    return draft("polygon-side", "side of a regular polygon from its size across flats")
        .law("side = s·tan(180°/z)")
        .in("acrossFlats", LENGTH, "size s across flats", ABOVE_0)
        .in("flats", COUNT, "flats z", between(3, 24))
        .source("geometry")
        .example("acrossFlats=17mm flats=6")
        .by(
            v ->
                Answer.of(
                    "side",
                    LENGTH,
                    FlatWidth.polygonSideMm(v.num("acrossFlats"), v.count("flats"))),
            FlatWidth.class);
  }

  private static Formula flats() {
    return draft("flats-time", "flats milled with a Y axis, the spindle held for each")
        .law("t = th + z·p·(w + run)/vf + (z − 1)·ti + (z·p − 1)·tr")
        .in("flats", COUNT, "flats z", atLeast(1))
        .in("width", LENGTH, "width w across which the cutter travels", ABOVE_0)
        .in("feed", SLIDE_FEED, "feed vf", ABOVE_0)
        .in("passes", COUNT, "passes p for each flat", atLeast(1), "1")
        .in("run", LENGTH, "run-in and overrun together", FROM_0, "3 mm")
        .in("index", SECONDS, "time ti to the next angle, with clamping", FROM_0, "0.3 s")
        .in("return", SECONDS, "time tr back to the start of a pass", FROM_0, "0.3 s")
        .with(CrossWorkFormulas::hold)
        .source("derived" + HOLD)
        .example("flats=2 width=10.54mm feed=400mm/min")
        .by(
            v ->
                Answer.of(
                    "time t",
                    SECONDS,
                    new CrossFlats(
                            v.count("flats"),
                            v.count("passes"),
                            v.num("width"),
                            v.num("run"),
                            v.num("index"),
                            v.num("return"),
                            v.num("hold"))
                        .timeS(v.num("feed"))),
            CrossFlats.class);
  }

  private static Formula polar() {
    return draft("polar-flat", "a flat milled without Y axis: the C axis turns while X follows")
        .law(
            "n = vf/(2π·d) at mid-flat; peak acceleration (3√3/8)·vf²/d²; no line through the axis")
        .in("distance", LENGTH, "distance d of the path from the axis", ABOVE_0)
        .in("path", LENGTH, "length of the straight path, centred", ABOVE_0)
        .in("feed", SLIDE_FEED, "feed vf along the flat", ABOVE_0)
        .in("limit", ROTATION, "highest speed of the C axis", ABOVE_0, "60 rev/min")
        .source("derived")
        .example("distance=8.5mm path=10.54mm feed=400mm/min")
        .by(
            v -> {
              PolarFlat flat = new PolarFlat(v.num("distance"), v.num("path"), v.num("feed"));
              return Answer.of("time t", SECONDS, flat.timeS(v.num("limit")))
                  .result("highest C speed", ROTATION, flat.peakRevPerMin())
                  .result("highest C acceleration", ANGULAR_GAIN, flat.peakAccelerationRadPerS2())
                  .result(
                      "smallest distance at full feed",
                      LENGTH,
                      flat.smallestDistanceMm(v.num("limit")));
            },
            PolarFlat.class);
  }

  private static Formula polygon() {
    return draft("polygon-turning", "polygon turning: inserts, speeds, crown of the flats, time")
        .law(
            "tool:work 2:1 the same way; z/2 inserts; crown = b − b·√(1 − (w/2a)²), a = s/2 + 2·rt")
        .in("acrossFlats", LENGTH, "size s across flats", ABOVE_0)
        .in("flats", COUNT, "flats z, even", between(2, 24))
        .in("tipRadius", LENGTH, "radius rt of the insert tips about the cutter's axis", ABOVE_0)
        .in("spindleSpeed", ROTATION, "work speed n", ABOVE_0)
        .in("travel", LENGTH, "travel along the axis", ABOVE_0)
        .in("feed", FEED, "feed for each work revolution", ABOVE_0)
        .source(
            "[PROB] for ratio and inserts, the rest derived; pages disagree about the sense of rotation,"
                + " which must be proven on the machine")
        .example(
            "acrossFlats=17mm flats=6 tipRadius=45mm spindleSpeed=1000rev/min travel=12mm"
                + " feed=0.05mm/rev")
        .by(
            v -> {
              PolygonTurning turning =
                  new PolygonTurning(v.num("acrossFlats"), v.count("flats"), v.num("tipRadius"));
              double revPerMin = v.num("spindleSpeed");
              double sideMm =
                  v.count("flats") == 2
                      ? v.num("acrossFlats")
                      : FlatWidth.polygonSideMm(v.num("acrossFlats"), v.count("flats"));
              return Answer.of(
                      "time t", SECONDS, turning.timeS(v.num("travel"), v.num("feed"), revPerMin))
                  .step("distance of the axes", LENGTH, turning.axesDistanceMm())
                  .step("width of a flat", LENGTH, sideMm)
                  .result("inserts", COUNT, turning.insertsCount())
                  .result("tool speed", ROTATION, turning.toolRevPerMin(revPerMin))
                  .result("cutting speed", SPEED, turning.cuttingMPerMin(revPerMin))
                  .result("crown of a flat", MICRON, turning.crownUm(sideMm));
            },
            PolygonTurning.class);
  }

  private static Formula crossHole() {
    return draft("cross-hole-time", "a hole drilled from the side, the spindle held")
        .law("entry sag R − √(R² − (d/2)²); t = th + travel/(f·n)")
        .in("diameter", LENGTH, "diameter 2R of the work", ABOVE_0)
        .in("drillDiameter", LENGTH, "diameter d of the drill", ABOVE_0)
        .in("feed", FEED, "feed f for each revolution of the tool", ABOVE_0)
        .with(SpeedInputs::either)
        .optional("boreDiameter", LENGTH, "bore that the hole breaks into", ABOVE_0)
        .optional("depth", LENGTH, "depth of a blind hole", ABOVE_0)
        .in("pointAngle", ANGLE, "point angle", aboveTo(0, 180), "130 deg")
        .in("approach", LENGTH, "approach at feed", FROM_0, "1 mm")
        .in("overrun", LENGTH, "overrun", FROM_0, "0.5 mm")
        .with(CrossWorkFormulas::hold)
        .source("derived" + HOLD)
        .example("diameter=20mm drillDiameter=4mm feed=0.08mm/rev speed=60m/min")
        .by(CrossWorkFormulas::crossHole, CrossHole.class);
  }

  private static Answer crossHole(Values v) {
    CrossHole hole =
        new CrossHole(
            v.num("diameter"),
            v.num("drillDiameter"),
            v.num("pointAngle"),
            v.num("approach"),
            v.num("overrun"),
            v.num("feed"),
            v.num("hold"));
    double travelMm =
        v.has("depth")
            ? hole.blindTravelMm(v.num("depth"))
            : v.has("boreDiameter")
                ? hole.intoBoreTravelMm(v.num("boreDiameter"))
                : hole.throughTravelMm();
    double revPerMin = SpeedInputs.revPerMin(v, v.num("drillDiameter"));
    return Answer.of("time t", SECONDS, hole.timeS(travelMm, revPerMin))
        .step("tool speed n", ROTATION, revPerMin)
        .step("sag where the drill enters", LENGTH, hole.entrySagMm())
        .step("travel", LENGTH, travelMm);
  }

  private static Formula faceHoles() {
    return draft("face-holes-time", "a pattern of holes off centre in the face")
        .law("t = th + z·ts + (z − 1)·max(tr, ti) + tr")
        .in("holes", COUNT, "holes z", atLeast(1))
        .in("stroke", SECONDS, "time ts of one stroke, from drilling-time", ABOVE_0)
        .in("return", SECONDS, "time tr to retract and come back", FROM_0, "0.3 s")
        .in("index", SECONDS, "time ti to the next angle, with clamping", FROM_0, "0.3 s")
        .with(CrossWorkFormulas::hold)
        .source("derived" + HOLD)
        .example("holes=3 stroke=1.2s")
        .by(
            v ->
                Answer.of(
                    "time t",
                    SECONDS,
                    new FaceHoles(
                            v.count("holes"),
                            v.num("stroke"),
                            v.num("return"),
                            v.num("index"),
                            v.num("hold"))
                        .timeS()),
            FaceHoles.class);
  }

  private static Formula contour() {
    return draft("contour-time", "chamfering, deburring or milling along a path with a live tool")
        .law("t = th + path/vf + strokes·tp")
        .in("path", LENGTH, "length of all strokes", ABOVE_0)
        .in("feed", SLIDE_FEED, "feed vf along the path", ABOVE_0)
        .in("strokes", COUNT, "strokes between which the tool lifts", atLeast(1), "1")
        .in("plunge", SECONDS, "time tp to plunge, lift and jump", FROM_0, "0.2 s")
        .with(CrossWorkFormulas::hold)
        .source("derived" + HOLD)
        .example("path=31.416mm feed=600mm/min")
        .by(
            v ->
                Answer.of(
                    "time t",
                    SECONDS,
                    new ContourPass(
                            v.num("path"), v.count("strokes"), v.num("plunge"), v.num("hold"))
                        .timeS(v.num("feed"))),
            ContourPass.class);
  }

  private static Formula saddle() {
    return draft(
            "saddle-edge", "edge where a cross hole meets work or bore, and its deburring time")
        .law("L = ∫ √(r² + h′²) dθ, h = √(R² − r²·cos² θ); height R − √(R² − r²)")
        .in("diameter", LENGTH, "diameter 2R of the work or bore", ABOVE_0)
        .in("holeDiameter", LENGTH, "diameter 2r of the hole", ABOVE_0)
        .in("feed", SLIDE_FEED, "feed along the edge", ABOVE_0, "600 mm/min")
        .in("plunge", SECONDS, "time to plunge and lift", FROM_0, "0.2 s")
        .with(CrossWorkFormulas::hold)
        .source("geometry of two crossing cylinders, checked by numerical integration" + HOLD)
        .example("diameter=20mm holeDiameter=6mm")
        .by(
            v -> {
              SaddleEdge edge = new SaddleEdge(v.num("diameter"), v.num("holeDiameter"));
              return Answer.of("length L of the edge", LENGTH, edge.lengthMm())
                  .result("height of the saddle", LENGTH, edge.heightMm())
                  .result(
                      "time once around",
                      SECONDS,
                      edge.pass(v.num("plunge"), v.num("hold")).timeS(v.num("feed")));
            },
            SaddleEdge.class,
            ContourPass.class);
  }

  private static Formula engraving() {
    return draft("engraving-time", "a text engraved with straight strokes: way, strokes, time")
        .law("way = Σ √(Δx² + Δy²); t = th + way/vf + strokes·tp")
        .in("text", TEXT, "the text; write it in quotation marks where it has blanks", ANY)
        .in("height", LENGTH, "height of the letters", ABOVE_0)
        .in("feed", SLIDE_FEED, "feed vf", ABOVE_0, "400 mm/min")
        .usual(between(200, 800), "not usual for engraving")
        .in("plunge", SECONDS, "time tp to plunge, lift and jump", FROM_0, "0.15 s")
        .with(CrossWorkFormulas::hold)
        .source("our own single-stroke letters; feed and times from memory, common practice")
        .example("text=R12 height=2.5mm")
        .by(
            v -> {
              Lettering letters = StrokeFont.plain().line(v.text("text"), v.num("height"));
              return Answer.of(
                      "time t",
                      SECONDS,
                      letters.pass(v.num("plunge"), v.num("hold")).timeS(v.num("feed")))
                  .step("way in cut", LENGTH, letters.wayMm())
                  .step("strokes", COUNT, letters.strokesCount())
                  .result("width of the text", LENGTH, letters.widthMm());
            },
            StrokeFont.class,
            Lettering.class);
  }
}
