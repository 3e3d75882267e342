package drumline.app.formula.cut;

import static drumline.app.formula.Allowed.ABOVE_0;
import static drumline.app.formula.Allowed.FROM_0;
import static drumline.app.formula.Allowed.aboveTo;
import static drumline.app.formula.Allowed.atLeast;
import static drumline.app.formula.Allowed.between;
import static drumline.app.formula.Measure.AMOUNT;
import static drumline.app.formula.Measure.ANGLE;
import static drumline.app.formula.Measure.COUNT;
import static drumline.app.formula.Measure.FEED;
import static drumline.app.formula.Measure.FORCE;
import static drumline.app.formula.Measure.HARDNESS;
import static drumline.app.formula.Measure.LENGTH;
import static drumline.app.formula.Measure.REMOVAL_RATE;
import static drumline.app.formula.Measure.ROTATION;
import static drumline.app.formula.Measure.SECONDS;
import static drumline.app.formula.Measure.SLIDE_FEED;
import static drumline.app.formula.Measure.TORQUE;
import static drumline.app.formula.Topic.DRILLING;

import drumline.app.formula.Answer;
import drumline.app.formula.Formula;
import drumline.app.formula.FormulaDraft;
import drumline.app.formula.Values;
import drumline.cutting.drilling.CounterborePass;
import drumline.cutting.drilling.DrillPass;
import drumline.cutting.drilling.DrillPoint;
import drumline.cutting.drilling.HoleCut;
import drumline.cutting.drilling.HoleSplit;
import drumline.cutting.drilling.PeckCycle;
import drumline.cutting.drilling.PowerLawDrill;
import drumline.cutting.drilling.ReamPass;
import drumline.cutting.drilling.RelativeSpeed;
import drumline.cutting.drilling.ShawOxfordTorque;
import drumline.cutting.drilling.StepDrill;
import drumline.cutting.force.ChipCompression;
import java.util.List;

/** Holes made from the end. */
final class DrillingFormulas {
  private DrillingFormulas() {}

  static List<Formula> all() {
    return List.of(
        point(),
        drilling(),
        peck(),
        split(),
        counterbore(),
        ream(),
        relative(),
        force(),
        stepDrill(),
        powerLaw(),
        shaw());
  }

  private static FormulaDraft draft(String name, String title) {
    return Formula.named(DRILLING, name, title);
  }

  private static FormulaDraft hole(FormulaDraft draft) {
    return draft
        .in("diameter", LENGTH, "diameter d", ABOVE_0)
        .in("startDiameter", LENGTH, "diameter d0 of a hole already there", FROM_0, "0 mm")
        .in("pointAngle", ANGLE, "point angle σ", aboveTo(0, 180), "130 deg");
  }

  private static FormulaDraft stroke(FormulaDraft draft) {
    return hole(draft)
        .in("depth", LENGTH, "length l of the hole", ABOVE_0)
        .choice("depthTo", "what the length is measured to", DrillPass.DepthTo.FULL_DIAMETER)
        .in("feed", FEED, "feed f", ABOVE_0)
        .with(SpeedInputs::either)
        .in("approach", LENGTH, "approach la at feed", FROM_0, "1 mm")
        .in("overrun", LENGTH, "overrun lo behind a through hole", FROM_0, "0 mm");
  }

  private static DrillPass pass(Values v) {
    return new DrillPass(
        v.num("diameter"),
        v.num("startDiameter"),
        v.num("pointAngle"),
        v.num("depth"),
        v.choice("depthTo", DrillPass.DepthTo.class),
        v.num("approach"),
        v.num("overrun"),
        v.num("feed"));
  }

  private static Formula point() {
    return draft("drill-point", "length of a drill's point")
        .law("A = (d − d0)/(2·tan(σ/2))")
        .with(DrillingFormulas::hole)
        .source("geometry; the form (d/2)·tan 59° seen in print is wrong [EXPM-T]")
        .example("diameter=10mm pointAngle=118deg")
        .by(
            v ->
                Answer.of(
                    "length A",
                    LENGTH,
                    DrillPoint.lengthMm(
                        v.num("diameter"), v.num("startDiameter"), v.num("pointAngle"))),
            DrillPoint.class);
  }

  private static Formula drilling() {
    return draft("drilling-time", "one stroke of a drill, the point counted as the depth says")
        .law("t = (la + l + A + lo)/(f·n), A the point where the depth is to the full diameter")
        .with(DrillingFormulas::stroke)
        .source("[ALUM] (blind, to the tip), [SHARMA] problem 4.14 (through)")
        .example("diameter=12.7mm depth=60mm depthTo=tip feed=0.3mm/rev speed=25m/min approach=0")
        .by(
            v -> {
              double revPerMin = SpeedInputs.revPerMin(v, v.num("diameter"));
              return Answer.of("time t", SECONDS, pass(v).timeS(revPerMin))
                  .step("spindle speed n", ROTATION, revPerMin)
                  .step("travel", LENGTH, pass(v).travelMm())
                  .step("revolutions", AMOUNT, pass(v).revolutionsCount())
                  .result("removal rate", REMOVAL_RATE, pass(v).removalMm3PerS(revPerMin));
            },
            DrillPass.class);
  }

  private static Formula peck() {
    return draft("peck-time", "deep drilling with withdrawals to clear the chips")
        .law("T = L/(f·n) + Σ [2·zk/vr + c/(f·n) + td] over withdrawals from depth zk")
        .with(DrillingFormulas::stroke)
        .in("firstPeck", LENGTH, "first stroke", ABOVE_0)
        .in("nextPeck", LENGTH, "each further stroke", ABOVE_0)
        .in("clearance", LENGTH, "distance c above the bottom where rapid ends", FROM_0, "0.5 mm")
        .in("rapid", SLIDE_FEED, "rapid speed vr of the slide", ABOVE_0)
        .in("dwell", SECONDS, "wait td outside the hole", FROM_0, "0 s")
        .source(
            "derived; first stroke 3 to 5 d, further ones 1 to 1.5 d in steel, one stroke to 8 to 12 d"
                + " with coolant through the drill: from memory")
        .example(
            "diameter=5mm depth=50mm feed=0.1mm/rev speed=60m/min firstPeck=20mm nextPeck=7mm"
                + " rapid=15000mm/min")
        .by(
            v -> {
              double revPerMin = SpeedInputs.revPerMin(v, v.num("diameter"));
              PeckCycle cycle =
                  new PeckCycle(
                      pass(v).travelMm(),
                      v.num("firstPeck"),
                      v.num("nextPeck"),
                      v.num("clearance"),
                      v.num("feed"),
                      v.num("rapid"),
                      v.num("dwell"));
              return Answer.of("time T", SECONDS, cycle.timeS(revPerMin))
                  .step("spindle speed n", ROTATION, revPerMin)
                  .step("travel L", LENGTH, pass(v).travelMm())
                  .step("withdrawals", COUNT, cycle.withdrawalsMm().size())
                  .result("time in one stroke", SECONDS, pass(v).timeS(revPerMin));
            },
            PeckCycle.class);
  }

  private static Formula split() {
    return draft("hole-split", "a deep hole divided over several positions")
        .law("positions = ⌈t/target⌉; equal shares of the depth")
        .in("time", SECONDS, "time t of the whole hole", ABOVE_0)
        .in("target", SECONDS, "time that one position may take", ABOVE_0)
        .in("depth", LENGTH, "depth of the hole", ABOVE_0)
        .source("derived; each following drill 0.1 to 0.2 mm smaller, or equal: from memory")
        .example("time=5.5s target=3s depth=44mm")
        .by(
            v -> {
              int positions = HoleSplit.positionsCount(v.num("time"), v.num("target"));
              Answer answer = Answer.of("positions", COUNT, positions);
              for (double depthMm : HoleSplit.depthsMm(v.num("depth"), positions)) {
                answer = answer.result("drilled to", LENGTH, depthMm);
              }
              return answer;
            },
            HoleSplit.class);
  }

  private static Formula counterbore() {
    return draft("counterbore-time", "counterboring, countersinking, centring to a depth")
        .law("t = (la + l)/(f·n) + u/n")
        .in("diameter", LENGTH, "diameter", ABOVE_0)
        .in("depth", LENGTH, "depth l", ABOVE_0)
        .in("feed", FEED, "feed f", ABOVE_0)
        .with(SpeedInputs::either)
        .in("approach", LENGTH, "approach la at feed", FROM_0, "1 mm")
        .in("dwell", AMOUNT, "revolutions u at the bottom", FROM_0, "2")
        .source("derived; a dwell of 1 to 2 revolutions is common practice")
        .example("diameter=12mm depth=4mm feed=0.1mm/rev speed=60m/min")
        .by(
            v -> {
              double revPerMin = SpeedInputs.revPerMin(v, v.num("diameter"));
              CounterborePass pass =
                  new CounterborePass(
                      v.num("depth"), v.num("approach"), v.num("feed"), v.num("dwell"));
              return Answer.of("time t", SECONDS, pass.timeS(revPerMin))
                  .step("spindle speed n", ROTATION, revPerMin)
                  .step("revolutions", AMOUNT, pass.revolutionsCount());
            },
            CounterborePass.class);
  }

  private static Formula ream() {
    return draft("reaming-time", "reaming, out again at rapid or at feed")
        .law("t = (la + l + A + lo)/(f·n), twice where the reamer comes out at feed")
        .in("diameter", LENGTH, "diameter", ABOVE_0)
        .in("depth", LENGTH, "length l", ABOVE_0)
        .in("feed", FEED, "feed f", ABOVE_0)
        .with(SpeedInputs::either)
        .in("lead", LENGTH, "chamfer lead A that must pass the end", FROM_0, "2 mm")
        .in("approach", LENGTH, "approach la at feed", FROM_0, "1 mm")
        .in("overrun", LENGTH, "overrun lo", FROM_0, "0 mm")
        .choice("out", "how the reamer comes out", ReamPass.Out.AT_RAPID)
        .source("derived; out at feed for IT8 and finer is common practice, from memory")
        .example("diameter=10mm depth=20mm feed=0.3mm/rev speed=15m/min out=at-feed")
        .by(
            v -> {
              double revPerMin = SpeedInputs.revPerMin(v, v.num("diameter"));
              ReamPass pass =
                  new ReamPass(
                      v.num("depth"),
                      v.num("lead"),
                      v.num("approach"),
                      v.num("overrun"),
                      v.num("feed"),
                      v.choice("out", ReamPass.Out.class));
              return Answer.of("time t", SECONDS, pass.timeS(revPerMin))
                  .step("spindle speed n", ROTATION, revPerMin)
                  .step("revolutions", AMOUNT, pass.revolutionsCount());
            },
            ReamPass.class);
  }

  private static Formula relative() {
    return draft("relative-speed", "speed between turning work and a turning end tool")
        .law("n = nw + nt against each other, |nw − nt| the same way")
        .in("workSpeed", ROTATION, "speed nw of the work", FROM_0)
        .in("toolSpeed", ROTATION, "speed nt of the tool", FROM_0)
        .choice("sense", "how the tool turns to the work", RelativeSpeed.Sense.OPPOSITE)
        .source("kinematics; the feed counts on this speed")
        .example("workSpeed=2000rev/min toolSpeed=3000rev/min")
        .by(
            v ->
                Answer.of(
                    "relative speed n",
                    ROTATION,
                    RelativeSpeed.revPerMin(
                        v.num("workSpeed"),
                        v.num("toolSpeed"),
                        v.choice("sense", RelativeSpeed.Sense.class))),
            RelativeSpeed.class);
  }

  private static Formula force() {
    return draft("drilling-force", "torque, thrust and power of a drill, core drill or counterbore")
        .law("fz = f/z; h = fz·sin(σ/2); M = kc·f·(d² − d0²)/8000; Ff = cF·kc·(d − d0)·f·sin(σ/2)")
        .with(DrillingFormulas::hole)
        .in("edges", COUNT, "edges z", atLeast(1), "2")
        .in("feed", FEED, "feed f", ABOVE_0)
        .with(SpeedInputs::either)
        .choice("thrust", "form of the point", HoleCut.Thrust.CHISEL_POINT)
        .with(CutInputs.of(ChipCompression.DRILLING))
        .source(
            "lip force of [TSCH]; thrust factor from memory; two other published models differ by up"
                + " to 45 % in torque")
        .example(
            "diameter=8.5mm pointAngle=130deg feed=0.15mm/rev speed=70m/min kc11=1200MPa mc=0.18"
                + " compression=outside-turning")
        .by(
            v -> {
              HoleCut cut =
                  new HoleCut(
                      v.num("diameter"),
                      v.num("startDiameter"),
                      v.count("edges"),
                      v.num("pointAngle") / 2,
                      v.num("feed"),
                      v.choice("thrust", HoleCut.Thrust.class));
              double revPerMin = SpeedInputs.revPerMin(v, v.num("diameter"));
              return CutInputs.load(
                      v, cut.load(CutInputs.constants(v), CutInputs.corrections(v), revPerMin))
                  .step("spindle speed n", ROTATION, revPerMin);
            },
            HoleCut.class);
  }

  private static Formula stepDrill() {
    return draft("step-drill-force", "torque, thrust and power of a step drill, all steps in cut")
        .law("each step enlarges the hole of the one before; torques and thrusts add")
        .several("diameters", LENGTH, "diameters from the tip back", ABOVE_0)
        .in("pointAngle", ANGLE, "point angle of the tip", aboveTo(0, 180), "130 deg")
        .in("stepAngle", ANGLE, "included angle of the steps", aboveTo(0, 180), "90 deg")
        .in("feed", FEED, "feed f", ABOVE_0)
        .in("spindleSpeed", ROTATION, "spindle speed n", ABOVE_0)
        .choice("thrust", "form of the point", HoleCut.Thrust.THINNED_POINT)
        .with(CutInputs.of(ChipCompression.DRILLING))
        .source("opening out of drilling-force, derived")
        .example("diameters=6mm:9mm:12mm feed=0.12mm/rev spindleSpeed=2500rev/min material=11SMn30")
        .by(
            v -> {
              StepDrill drill =
                  new StepDrill(
                      v.nums("diameters"),
                      v.num("pointAngle"),
                      v.num("stepAngle"),
                      v.num("feed"),
                      v.choice("thrust", HoleCut.Thrust.class));
              return CutInputs.load(
                  v,
                  drill.load(
                      CutInputs.constants(v), CutInputs.corrections(v), v.num("spindleSpeed")));
            },
            StepDrill.class);
  }

  private static Formula powerLaw() {
    return draft(
            "drilling-power-law", "torque and thrust of a high-speed-steel drill, third opinion")
        .law("M = C1·D^1.9·f^0.8 (kgf·mm); T = C2·D·f^q (kgf)")
        .in("diameter", LENGTH, "diameter D", ABOVE_0)
        .in("feed", FEED, "feed f", ABOVE_0)
        .choice("work", "steel of 735 N/mm² or grey iron of 190 HB", PowerLawDrill.STEEL)
        .source("[EXPM] for the exponents; constants from memory")
        .example("diameter=12.7mm feed=0.25mm/rev")
        .by(
            v -> {
              PowerLawDrill law = v.choice("work", PowerLawDrill.class);
              return Answer.of("torque M", TORQUE, law.torqueNm(v.num("diameter"), v.num("feed")))
                  .result("thrust T", FORCE, law.thrustN(v.num("diameter"), v.num("feed")));
            },
            PowerLawDrill.class);
  }

  private static Formula shaw() {
    return draft("drilling-torque-by-hardness", "torque of a drill from hardness, second opinion")
        .law("M = 0.087·25.4^0.4·9.81·HB·f^0.8·d^1.8 (N·mm), web 0.18·d")
        .in("diameter", LENGTH, "diameter d", ABOVE_0)
        .in("feed", FEED, "feed f", ABOVE_0)
        .in("hardness", HARDNESS, "Brinell hardness", ABOVE_0)
        .usual(between(60, 450), "not a hardness that is drilled like this")
        .source("Shaw and Oxford's relation, from memory")
        .example("diameter=12.7mm feed=0.25mm/rev hardness=200")
        .by(
            v ->
                Answer.of(
                    "torque M",
                    TORQUE,
                    ShawOxfordTorque.torqueNm(v.num("diameter"), v.num("feed"), v.num("hardness"))),
            ShawOxfordTorque.class);
  }
}
