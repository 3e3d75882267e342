package drumline.app.formula.cut;

import static drumline.app.formula.Allowed.ABOVE_0;
import static drumline.app.formula.Allowed.FROM_0;
import static drumline.app.formula.Allowed.atLeast;
import static drumline.app.formula.Allowed.between;
import static drumline.app.formula.Measure.COUNT;
import static drumline.app.formula.Measure.FACTOR;
import static drumline.app.formula.Measure.FEED;
import static drumline.app.formula.Measure.FORCE;
import static drumline.app.formula.Measure.LENGTH;
import static drumline.app.formula.Measure.ROTATION;
import static drumline.app.formula.Measure.SECONDS;
import static drumline.app.formula.Measure.SPEED;
import static drumline.app.formula.Measure.STRESS;
import static drumline.app.formula.Topic.SLOTTING;

import drumline.app.formula.Answer;
import drumline.app.formula.Formula;
import drumline.app.formula.FormulaDraft;
import drumline.cutting.force.ChipCompression;
import drumline.cutting.force.CuttingLoad;
import drumline.cutting.slotting.BroachPull;
import drumline.cutting.slotting.DoubleStroke;
import drumline.cutting.slotting.SlotStrokes;
import drumline.cutting.slotting.SlottingCut;
import drumline.cutting.slotting.WobbleBroaching;
import java.util.List;

/** Slotting and broaching with a tool that does not turn. */
final class SlottingFormulas {
  private SlottingFormulas() {}

  static List<Formula> all() {
    return List.of(slot(), force(), doubleStroke(), wobble(), broach());
  }

  private static FormulaDraft draft(String name, String title) {
    return Formula.named(SLOTTING, name, title);
  }

  private static Formula slot() {
    return draft("slotting-time", "slots cut stroke by stroke with the spindle held")
        .law(
            "N = ⌈depth/ap⌉ + spring; t = slots·N·[s/vc + s/vr + tt] + (slots − 1)·ti + th, s = l + 2·c")
        .in("depth", LENGTH, "depth of the slot", ABOVE_0)
        .in("length", LENGTH, "length l of the slot", ABOVE_0)
        .in("infeed", LENGTH, "infeed ap for each stroke", ABOVE_0, "0.05 mm")
        .usual(between(0.02, 0.075), "not usual for slotting")
        .in("springStrokes", COUNT, "strokes without infeed", atLeast(0), "2")
        .in("clearance", LENGTH, "clearance c at each end", FROM_0, "2 mm")
        .in("cutSpeed", SPEED, "cutting speed vc", ABOVE_0, "8 m/min")
        .in("returnSpeed", SPEED, "return speed vr", ABOVE_0, "20 m/min")
        .in("turn", SECONDS, "time tt to turn, lift and feed in", FROM_0, "0.1 s")
        .in("slots", COUNT, "slots around the work", atLeast(1), "1")
        .in("index", SECONDS, "time ti to the next angle", FROM_0, "0.3 s")
        .in("hold", SECONDS, "time th to orient, clamp and unclamp", FROM_0, "0.4 s")
        .source("derived; infeed [MAD]; speeds and times from memory")
        .example("depth=2.8mm length=20mm hold=0s")
        .by(
            v -> {
              SlotStrokes strokes =
                  new SlotStrokes(
                      v.num("depth"),
                      v.num("infeed"),
                      v.count("springStrokes"),
                      v.num("length"),
                      v.num("clearance"),
                      v.num("cutSpeed"),
                      v.num("returnSpeed"),
                      v.num("turn"),
                      v.count("slots"),
                      v.num("index"),
                      v.num("hold"));
              return Answer.of("time t", SECONDS, strokes.timeS())
                  .step("strokes for each slot", COUNT, strokes.strokesCount())
                  .step("one double stroke", SECONDS, strokes.strokeS());
            },
            SlotStrokes.class);
  }

  private static Formula force() {
    return draft("slotting-force", "force of a slotting stroke and torque at the held spindle")
        .law("F = kc(h = ap)·K·w·ap along the axis; spindle clamp checked with M = F·r")
        .in("width", LENGTH, "width w of the edge", ABOVE_0)
        .in("infeed", LENGTH, "infeed ap for each stroke", ABOVE_0, "0.05 mm")
        .in("radius", LENGTH, "distance r of the edge from the axis", FROM_0)
        .in("cutSpeed", SPEED, "cutting speed", ABOVE_0, "8 m/min")
        .in("passiveShare", FACTOR, "radial force as a share", between(0, 2), "0.5")
        .with(CutInputs.of(ChipCompression.SLOTTING))
        .source("[TSCH] for the force; the spindle's clamp with the whole force, the safe side")
        .example("width=4mm radius=8mm material=C45")
        .by(
            v ->
                CutInputs.load(
                    v,
                    new SlottingCut(
                            v.num("width"), v.num("infeed"), v.num("radius"), v.num("passiveShare"))
                        .load(CutInputs.constants(v), CutInputs.corrections(v), v.num("cutSpeed"))),
            SlottingCut.class);
  }

  private static Formula doubleStroke() {
    return draft("double-stroke-time", "one cutting stroke and the return")
        .law("t = s/vc + s/vr")
        .in("stroke", LENGTH, "stroke s", ABOVE_0)
        .in("cutSpeed", SPEED, "cutting speed vc", ABOVE_0)
        .in("returnSpeed", SPEED, "return speed vr", ABOVE_0)
        .source("[SHARMA] problem 4.16")
        .example("stroke=700mm cutSpeed=11m/min returnSpeed=24m/min")
        .by(
            v ->
                Answer.of(
                    "time t",
                    SECONDS,
                    DoubleStroke.timeS(v.num("stroke"), v.num("cutSpeed"), v.num("returnSpeed"))),
            DoubleStroke.class);
  }

  private static Formula wobble() {
    return draft("wobble-broaching", "inside hexagon or square pressed in by a wobbling broach")
        .law("t = (la + l)/(f·n); thrust ≈ kc(h = f)·K·U·f")
        .in("depth", LENGTH, "depth l", ABOVE_0)
        .in("edgeLength", LENGTH, "developed length U of edge outside the pilot hole", ABOVE_0)
        .in("feed", FEED, "feed f", ABOVE_0, "0.05 mm/rev")
        .usual(between(0.03, 0.1), "not usual for wobble broaching")
        .in("approach", LENGTH, "approach la at feed", FROM_0, "1 mm")
        .in("spindleSpeed", ROTATION, "spindle speed n", ABOVE_0)
        .with(CutInputs.of(ChipCompression.SLOTTING))
        .source("derived; feed from memory; the thrust is an estimate on the safe side")
        .example("depth=5mm edgeLength=12mm spindleSpeed=1500rev/min material=CuZn39Pb3")
        .by(
            v -> {
              WobbleBroaching broaching =
                  new WobbleBroaching(
                      v.num("depth"), v.num("approach"), v.num("edgeLength"), v.num("feed"));
              CuttingLoad load = broaching.load(CutInputs.constants(v), CutInputs.corrections(v));
              return Answer.of("time t", SECONDS, broaching.timeS(v.num("spindleSpeed")))
                  .step("specific force kc·K", STRESS, load.specificForceMpa())
                  .result("thrust", FORCE, load.axialForceN())
                  .noting(load.validity());
            },
            WobbleBroaching.class);
  }

  private static Formula broach() {
    return draft("broach-pull", "peak pull of a broach whose teeth cut together, and its stroke")
        .law("teeth = ⌈l/p⌉; F = teeth·F1; t = s/vc")
        .in("toothForce", FORCE, "force F1 of one tooth, see shear-force", ABOVE_0)
        .in("length", LENGTH, "length l of the bore", ABOVE_0)
        .in("pitch", LENGTH, "pitch p of the teeth", ABOVE_0)
        .in("stroke", LENGTH, "stroke s", ABOVE_0)
        .in("cutSpeed", SPEED, "cutting speed vc", ABOVE_0)
        .source("[GM] problem 4.19: three teeth in cut")
        .example("toothForce=7441N length=25mm pitch=10mm stroke=200mm cutSpeed=4m/min")
        .by(
            v -> {
              int teeth = BroachPull.teethCount(v.num("length"), v.num("pitch"));
              return Answer.of("peak pull", FORCE, BroachPull.peakN(v.num("toothForce"), teeth))
                  .step("teeth in cut", COUNT, teeth)
                  .result(
                      "time of the stroke",
                      SECONDS,
                      BroachPull.strokeS(v.num("stroke"), v.num("cutSpeed")));
            },
            BroachPull.class);
  }
}
