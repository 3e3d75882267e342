package drumline.app.formula.cut;

import static drumline.app.formula.Allowed.ABOVE_0;
import static drumline.app.formula.Allowed.FROM_0;
import static drumline.app.formula.Allowed.aboveTo;
import static drumline.app.formula.Allowed.atLeast;
import static drumline.app.formula.Allowed.between;
import static drumline.app.formula.Measure.AMOUNT;
import static drumline.app.formula.Measure.ANGLE;
import static drumline.app.formula.Measure.COUNT;
import static drumline.app.formula.Measure.FACTOR;
import static drumline.app.formula.Measure.FEED;
import static drumline.app.formula.Measure.HARDNESS;
import static drumline.app.formula.Measure.LENGTH;
import static drumline.app.formula.Measure.MICRON;
import static drumline.app.formula.Measure.ROTATION;
import static drumline.app.formula.Measure.SECONDS;
import static drumline.app.formula.Measure.SPEED;
import static drumline.app.formula.Topic.FINISHING;

import drumline.app.formula.Answer;
import drumline.app.formula.Formula;
import drumline.app.formula.FormulaDraft;
import drumline.cutting.finish.BrushDeburring;
import drumline.cutting.finish.FeedMarkRoughness;
import drumline.cutting.finish.KnurlPass;
import drumline.cutting.finish.KnurlTracking;
import drumline.cutting.finish.RollerBurnishing;
import java.util.List;

/** Surfaces, knurls, edges. */
final class FinishFormulas {
  private FinishFormulas() {}

  static List<Formula> all() {
    return List.of(roughness(), feed(), tracking(), knurl(), burnish(), brush());
  }

  private static FormulaDraft draft(String name, String title) {
    return Formula.named(FINISHING, name, title);
  }

  private static FormulaDraft nose(FormulaDraft draft) {
    return draft
        .in("noseRadius", LENGTH, "nose radius r", ABOVE_0)
        .in("reality", FACTOR, "factor by which the real surface is rougher", between(1, 3), "1");
  }

  private static Formula roughness() {
    return draft("roughness", "roughness that feed and nose radius leave")
        .law("Rt = f²/(8·r); Ra = f²/(32·r), each times the factor of reality")
        .in("feed", FEED, "feed f", ABOVE_0)
        .with(FinishFormulas::nose)
        .in("secondaryAngle", ANGLE, "angle κ′ of the secondary edge", aboveTo(0, 90), "5 deg")
        .source("[DANNY], ideal nose; real Ra 1.2 to 2 times as much, from memory")
        .example("feed=0.2mm/rev noseRadius=0.8mm")
        .by(
            v -> {
              FeedMarkRoughness marks =
                  new FeedMarkRoughness(v.num("noseRadius"), v.num("reality"));
              return Answer.of("Ra", MICRON, marks.raUm(v.num("feed")))
                  .result("Rt", MICRON, marks.rtUm(v.num("feed")))
                  .noting(marks.validity(v.num("feed"), v.num("secondaryAngle")));
            },
            FeedMarkRoughness.class);
  }

  private static Formula feed() {
    return draft("feed-for-roughness", "feed at which a wanted roughness is just reached")
        .law("f = √(32·r·Ra/factor), f = √(8·r·Rt/factor)")
        .in("ra", MICRON, "wanted Ra", ABOVE_0)
        .with(FinishFormulas::nose)
        .source("[DANNY], ideal nose; [AMBATO] prints about 0.5 mm for Ra 20 µm and r 0.4 mm")
        .example("ra=20um noseRadius=0.4mm")
        .by(
            v -> {
              FeedMarkRoughness marks =
                  new FeedMarkRoughness(v.num("noseRadius"), v.num("reality"));
              return Answer.of("feed f for Ra", FEED, marks.feedMmPerRev(v.num("ra")))
                  .result(
                      "feed f where the same figure is Rt",
                      FEED,
                      marks.feedForRtMmPerRev(v.num("ra")));
            },
            FeedMarkRoughness.class);
  }

  private static Formula tracking() {
    return draft("knurl-tracking", "blank diameter on which a knurl falls into its own teeth")
        .law("D = (zb/zk)·(Dk + c), zb whole; zb next to D·zk/(Dk + c)")
        .in("knurlTeeth", COUNT, "teeth zk of the knurl", atLeast(3))
        .in("knurlDiameter", LENGTH, "diameter Dk of the knurl", ABOVE_0)
        .in("correction", LENGTH, "correction c", FROM_0, "0.007 in")
        .in("blankDiameter", LENGTH, "diameter D that the blank has now", ABOVE_0)
        .source("[FRD], worked example of a 47-tooth knurl of 0.750 in on 0.500 in")
        .example("knurlTeeth=47 knurlDiameter=0.75in blankDiameter=0.5in")
        .by(
            v -> {
              KnurlTracking tracking =
                  new KnurlTracking(
                      v.count("knurlTeeth"), v.num("knurlDiameter"), v.num("correction"));
              double blankMm = v.num("blankDiameter");
              double teeth = tracking.teethCount(blankMm);
              double trackingMm = tracking.trackingDiameterMm(blankMm);
              return Answer.of("blank diameter that tracks", LENGTH, trackingMm)
                  .step("teeth on the blank as it is", AMOUNT, teeth)
                  .result("whole teeth", COUNT, Math.rint(tracking.teethCount(trackingMm)));
            },
            KnurlTracking.class);
  }

  private static Formula knurl() {
    return draft("knurl-time", "knurling, plunged in or fed along the axis")
        .law("t = (Nw + l/f)/n")
        .in("diameter", LENGTH, "diameter of the work", ABOVE_0)
        .with(SpeedInputs::either)
        .in("pressIn", AMOUNT, "revolutions Nw to press in", ABOVE_0, "10")
        .usual(between(5, 20), "not usual for knurling")
        .in("length", LENGTH, "way along the axis; 0 for a plunged knurl", FROM_0, "0 mm")
        .in("feed", FEED, "axial feed f", ABOVE_0, "0.2 mm/rev")
        .usual(between(0.1, 0.4), "not usual for knurling")
        .source("kinematics; 5 to 20 revolutions, 0.1 to 0.3 mm/rev, 15 to 50 m/min from memory")
        .example("diameter=25mm speed=25m/min length=10mm")
        .by(
            v -> {
              double revPerMin = SpeedInputs.revPerMin(v, v.num("diameter"));
              KnurlPass pass = new KnurlPass(v.num("pressIn"), v.num("length"), v.num("feed"));
              return Answer.of("time t", SECONDS, pass.timeS(revPerMin))
                  .step("spindle speed n", ROTATION, revPerMin)
                  .step("revolutions", AMOUNT, pass.revolutionsCount());
            },
            KnurlPass.class);
  }

  private static Formula burnish() {
    return draft("burnishing-time", "smoothing a turned seat or bore with rollers")
        .law("t = travel/(f·n)")
        .in("diameter", LENGTH, "diameter of the seat or bore", ABOVE_0)
        .in("length", LENGTH, "travel at feed", ABOVE_0)
        .in("feed", FEED, "feed f", ABOVE_0)
        .with(SpeedInputs::either)
        .in("rzBefore", MICRON, "roughness Rz before", ABOVE_0, "15 um")
        .in("hardness", HARDNESS, "Brinell hardness of the work", ABOVE_0, "200")
        .source("kinematics; Rz 5 to 30 µm before, 50 at most [YAMASA]; hardness from memory")
        .example("diameter=18mm length=25mm feed=0.15mm/rev speed=100m/min")
        .by(
            v -> {
              double revPerMin = SpeedInputs.revPerMin(v, v.num("diameter"));
              RollerBurnishing pass = new RollerBurnishing(v.num("length"), v.num("feed"));
              return Answer.of("time t", SECONDS, pass.timeS(revPerMin))
                  .step("spindle speed n", ROTATION, revPerMin)
                  .noting(pass.validity(v.num("rzBefore"), v.num("hardness")));
            },
            RollerBurnishing.class);
  }

  private static Formula brush() {
    return draft("brush-deburring-time", "burrs taken off with a turning brush")
        .law("t = Nw/nw + ta; tips vb = π·D·nb/1000")
        .in("brushDiameter", LENGTH, "diameter D of the brush", ABOVE_0)
        .in("brushSpeed", ROTATION, "speed nb of the brush", ABOVE_0)
        .in("spindleSpeed", ROTATION, "speed nw of the work", ABOVE_0)
        .in("revolutions", AMOUNT, "revolutions Nw of the work under the brush", ABOVE_0, "15")
        .usual(between(5, 30), "not usual for brushing")
        .in("approach", SECONDS, "time ta to come and go", FROM_0, "0.5 s")
        .source(
            "kinematics; revolutions and tip speed from memory. Wires fly: guards closed, never above"
                + " the brush maker's speed")
        .example("brushDiameter=100mm brushSpeed=3000rev/min spindleSpeed=400rev/min")
        .by(
            v -> {
              BrushDeburring brush =
                  new BrushDeburring(
                      v.num("brushDiameter"), v.num("revolutions"), v.num("approach"));
              return Answer.of("time t", SECONDS, brush.timeS(v.num("spindleSpeed")))
                  .step("speed of the tips", SPEED, brush.tipMPerMin(v.num("brushSpeed")))
                  .noting(brush.validity(v.num("brushSpeed")));
            },
            BrushDeburring.class);
  }
}
