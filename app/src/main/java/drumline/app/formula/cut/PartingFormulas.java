package drumline.app.formula.cut;

import static drumline.app.formula.Allowed.ABOVE_0;
import static drumline.app.formula.Allowed.FROM_0;
import static drumline.app.formula.Allowed.between;
import static drumline.app.formula.Measure.AMOUNT;
import static drumline.app.formula.Measure.COUNT;
import static drumline.app.formula.Measure.FACTOR;
import static drumline.app.formula.Measure.FEED;
import static drumline.app.formula.Measure.LENGTH;
import static drumline.app.formula.Measure.ROTATION;
import static drumline.app.formula.Measure.SECONDS;
import static drumline.app.formula.Measure.SPEED;
import static drumline.app.formula.Topic.PARTING;

import drumline.app.formula.Answer;
import drumline.app.formula.Formula;
import drumline.app.formula.FormulaDraft;
import drumline.app.formula.Values;
import drumline.cutting.force.ChipCompression;
import drumline.cutting.force.ForceSplit;
import drumline.cutting.parting.CutOff;
import drumline.cutting.parting.FaceGroove;
import drumline.cutting.parting.GroovePlunge;
import drumline.cutting.parting.GrooveWidening;
import drumline.cutting.parting.PlungeCut;
import drumline.cutting.turning.SurfaceSpeed;
import java.util.List;

/** Grooves and cut-off. */
final class PartingFormulas {
  private static final String PLUNGE = "derived; a dwell of 1 to 2 revolutions is common practice";

  private PartingFormulas() {}

  static List<Formula> all() {
    return List.of(cutOff(), cutOffSurface(), groove(), plunges(), plungeForce(), faceGroove());
  }

  private static FormulaDraft draft(String name, String title) {
    return Formula.named(PARTING, name, title);
  }

  private static FormulaDraft cutOff(FormulaDraft draft) {
    return draft
        .in("startDiameter", LENGTH, "diameter at which the cut begins", ABOVE_0)
        .in("endDiameter", LENGTH, "diameter where the piece is free: bore, pip or 0", FROM_0)
        .in("feed", FEED, "feed f", ABOVE_0)
        .usual(between(0.02, 0.2), "blades rub or break there")
        .in("approach", LENGTH, "approach at feed", FROM_0, "0.5 mm")
        .in("overrun", LENGTH, "way beyond the end diameter", FROM_0, "0 mm")
        .optional("reducedFeed", FEED, "feed near the end of the cut", ABOVE_0)
        .in("reducedBelow", LENGTH, "diameter below which it holds", FROM_0, "3 mm");
  }

  private static CutOff cutOff(Values v) {
    boolean reduced = v.has("reducedFeed");
    return new CutOff(
        v.num("startDiameter"),
        v.num("endDiameter"),
        v.num("approach"),
        v.num("overrun"),
        v.num("feed"),
        v.num("reducedFeed", v.num("feed")),
        reduced ? v.num("reducedBelow") : 0);
  }

  private static Formula cutOff() {
    return draft("cut-off-time", "parting from bar or tube at constant spindle speed")
        .law("t = Σ way/(f·n), with less feed near the end where it is given")
        .with(PartingFormulas::cutOff)
        .with(SpeedInputs::either)
        .source("derived; feed of 30 to 50 % below 2 to 3 mm is common practice, from memory")
        .example(
            "startDiameter=32mm endDiameter=0 feed=0.08mm/rev spindleSpeed=1500rev/min"
                + " reducedFeed=0.03mm/rev")
        .by(
            v -> {
              double revPerMin = SpeedInputs.revPerMin(v, v.num("startDiameter"));
              return Answer.of("time t", SECONDS, cutOff(v).timeS(revPerMin))
                  .step("spindle speed n", ROTATION, revPerMin)
                  .step("revolutions", AMOUNT, cutOff(v).revolutionsCount());
            },
            CutOff.class);
  }

  private static Formula cutOffSurface() {
    return draft("cut-off-time-surface-speed", "parting at constant surface speed, clamped")
        .law("t = π·(R0² − ra²)/(1000·vc·f) + (ra − R1)/(nmax·f) for each feed")
        .with(PartingFormulas::cutOff)
        .in("speed", SPEED, "cutting speed vc", ABOVE_0)
        .in("maxSpeed", ROTATION, "highest spindle speed", ABOVE_0)
        .in("minSpeed", ROTATION, "lowest spindle speed", FROM_0, "0 rev/min")
        .source("derived, checked by numerical integration; never without a highest speed")
        .example(
            "startDiameter=32mm endDiameter=0 feed=0.08mm/rev speed=150m/min maxSpeed=4000rev/min"
                + " approach=0")
        .by(
            v -> {
              SurfaceSpeed speed = TurningFormulas.speed(v);
              return Answer.of("time t", SECONDS, cutOff(v).timeS(speed))
                  .step(
                      "diameter below which the highest speed holds",
                      LENGTH,
                      2 * speed.clampRadiusMm());
            },
            CutOff.class);
  }

  private static Formula groove() {
    return draft("groove-time", "one plunge of a grooving or form tool with a dwell")
        .law("t = (la + a)/(f·n) + u/n")
        .in("diameter", LENGTH, "diameter at which the cut begins", ABOVE_0)
        .in("depth", LENGTH, "depth a of the groove", ABOVE_0)
        .in("feed", FEED, "feed f", ABOVE_0)
        .usual(between(0.02, 0.15), "blades rub or break there")
        .with(SpeedInputs::either)
        .in("approach", LENGTH, "approach la at feed", FROM_0, "0.5 mm")
        .in("dwell", AMOUNT, "revolutions u at the bottom", FROM_0, "2")
        .source(PLUNGE)
        .example("diameter=20mm depth=2mm feed=0.05mm/rev speed=120m/min")
        .by(
            v -> {
              double revPerMin = SpeedInputs.revPerMin(v, v.num("diameter"));
              GroovePlunge plunge =
                  new GroovePlunge(
                      v.num("diameter"),
                      v.num("depth"),
                      v.num("approach"),
                      v.num("feed"),
                      v.num("dwell"));
              return Answer.of("time t", SECONDS, plunge.timeS(revPerMin))
                  .step("spindle speed n", ROTATION, revPerMin)
                  .step("revolutions", AMOUNT, plunge.revolutionsCount());
            },
            GroovePlunge.class);
  }

  private static Formula plunges() {
    return draft("groove-plunges", "plunges for a groove wider than the tool")
        .law("count = ⌈(W − w)/(w − o)⌉ + 1")
        .in("grooveWidth", LENGTH, "width W of the groove", ABOVE_0)
        .in("toolWidth", LENGTH, "width w of the tool", ABOVE_0)
        .in("overlap", LENGTH, "overlap o of two plunges", FROM_0, "0.2 mm")
        .source("geometry")
        .example("grooveWidth=5mm toolWidth=2mm")
        .by(
            v ->
                Answer.of(
                    "plunges",
                    COUNT,
                    GrooveWidening.plungesCount(
                        v.num("grooveWidth"), v.num("toolWidth"), v.num("overlap"))),
            GrooveWidening.class);
  }

  private static Formula plungeForce() {
    return draft("cut-off-force", "force, torque and power of a blade fed straight in")
        .law("Fc = kc1.1·f^−mc·K·b·f; M = Fc·d/2000")
        .in("width", LENGTH, "width b of the blade", ABOVE_0)
        .in("diameter", LENGTH, "diameter d at the cut, the largest", ABOVE_0)
        .in("feed", FEED, "feed f", ABOVE_0)
        .with(SpeedInputs::either)
        .in("feedShare", FACTOR, "radial force as a share of Fc", between(0, 2), "0.65")
        .with(CutInputs.of(ChipCompression.GROOVING))
        .source("[TSCH] Dietrich and Tschätsch, 11th edition; share from memory; uncertainty 20 %")
        .example("width=2.5mm diameter=26mm feed=0.08mm/rev speed=130m/min material=11SMn30")
        .by(
            v -> {
              PlungeCut cut =
                  new PlungeCut(
                      v.num("width"),
                      v.num("diameter"),
                      v.num("feed"),
                      new ForceSplit(v.num("feedShare"), 0));
              double revPerMin = SpeedInputs.revPerMin(v, v.num("diameter"));
              return CutInputs.load(
                  v, cut.load(CutInputs.constants(v), CutInputs.corrections(v), revPerMin));
            },
            PlungeCut.class);
  }

  private static Formula faceGroove() {
    return draft("face-groove", "groove plunged into the face: time, force, first plunge")
        .law("t = (la + a)/(f·n) + u/n; Fc = kc·K·w·f; M = Fc·D/2000")
        .in("diameter", LENGTH, "outer diameter D of the groove", ABOVE_0)
        .in("width", LENGTH, "width w of the blade", ABOVE_0)
        .in("depth", LENGTH, "depth a", ABOVE_0)
        .in("feed", FEED, "feed f", ABOVE_0)
        .usual(between(0.03, 0.08), "not usual in face grooves")
        .with(SpeedInputs::either)
        .in("approach", LENGTH, "approach la at feed", FROM_0, "0.5 mm")
        .in("dwell", AMOUNT, "revolutions u at the bottom", FROM_0, "2")
        .optional("smallestFirst", LENGTH, "smallest first diameter of the blade", ABOVE_0)
        .optional("largestFirst", LENGTH, "largest first diameter of the blade", ABOVE_0)
        .with(CutInputs.of(ChipCompression.GROOVING))
        .source("[TSCH] for the force, else derived; a blade's diameters are its maker's")
        .example("diameter=24mm width=3mm depth=2mm feed=0.05mm/rev speed=120m/min material=C45")
        .by(PartingFormulas::faceGroove, FaceGroove.class);
  }

  private static Answer faceGroove(Values v) {
    double revPerMin = SpeedInputs.revPerMin(v, v.num("diameter"));
    FaceGroove groove =
        new FaceGroove(
            v.num("diameter"),
            v.num("width"),
            v.num("depth"),
            v.num("approach"),
            v.num("feed"),
            v.num("dwell"));
    Answer answer =
        CutInputs.load(v, groove.load(CutInputs.constants(v), CutInputs.corrections(v), revPerMin))
            .result("time t", SECONDS, groove.timeS(revPerMin));
    if (v.has("smallestFirst") && v.has("largestFirst")) {
      return answer.noting(groove.firstPlunge(v.num("smallestFirst"), v.num("largestFirst")));
    }
    return answer;
  }
}
