package drumline.app.formula.cut;

import static drumline.app.formula.Allowed.ABOVE_0;
import static drumline.app.formula.Allowed.FROM_0;
import static drumline.app.formula.Allowed.atLeast;
import static drumline.app.formula.Allowed.between;
import static drumline.app.formula.Allowed.inside;
import static drumline.app.formula.Measure.ANGLE;
import static drumline.app.formula.Measure.COUNT;
import static drumline.app.formula.Measure.FACTOR;
import static drumline.app.formula.Measure.LENGTH;
import static drumline.app.formula.Measure.LOOP_GAIN;
import static drumline.app.formula.Measure.ROTATION;
import static drumline.app.formula.Measure.SECONDS;
import static drumline.app.formula.Measure.SECTION;
import static drumline.app.formula.Measure.SLIDE_FEED;
import static drumline.app.formula.Measure.SLIDE_GAIN;
import static drumline.app.formula.Topic.THREADING;

import drumline.app.formula.Answer;
import drumline.app.formula.Formula;
import drumline.app.formula.FormulaDraft;
import drumline.cutting.force.ChipCompression;
import drumline.cutting.tables.ChasingPassTable;
import drumline.cutting.threading.ChasedThread;
import drumline.cutting.threading.ChaserPasses;
import drumline.cutting.threading.ChasingCut;
import drumline.cutting.threading.DieHeadPass;
import drumline.cutting.threading.InfeedSchedule;
import drumline.cutting.threading.ThreadDepth;
import drumline.cutting.threading.ThreadRunIn;
import java.util.List;

/** Threads chased with a point or cut by a die head. */
final class ThreadFormulas {
  private ThreadFormulas() {}

  static List<Formula> all() {
    return List.of(
        depth(),
        infeed(),
        passes(),
        chaser(),
        chasing(),
        chasingForce(),
        runIn(),
        limit(),
        dieHead());
  }

  private static FormulaDraft draft(String name, String title) {
    return Formula.named(THREADING, name, title);
  }

  private static Formula depth() {
    return draft("thread-depth", "depth to which a 60° thread is cut")
        .law("outside 17/24·H = 0.6134·P, inside 5/8·H = 0.5413·P, H = (√3/2)·P")
        .in("pitch", LENGTH, "pitch P", ABOVE_0)
        .source("[ISO-68-1] basic profile; factor 17/24 for the rounded root from memory")
        .example("pitch=1.5mm")
        .by(
            v ->
                Answer.of("outside", LENGTH, ThreadDepth.outsideMm(v.num("pitch")))
                    .result("inside", LENGTH, ThreadDepth.insideMm(v.num("pitch"))),
            ThreadDepth.class);
  }

  private static Formula infeed() {
    return draft("infeed-schedule", "depth of a chased thread after each pass")
        .law(
            "equal area a_k = h·√(k/N); eased first h·√(φ/(N − 1)), φ = 0.3, 1, 2 …; or equal depth")
        .in("depth", LENGTH, "whole depth h", ABOVE_0)
        .in("passes", COUNT, "passes N", between(1, 60))
        .choice(
            "rule",
            "how the depth is shared",
            List.of("equal-area", "eased-first", "equal-depth"),
            "equal-area")
        .source("equal area derived; [THRMAN] p. 114 for eased first")
        .example("depth=0.9201mm passes=6 rule=eased-first")
        .by(
            v -> {
              List<Double> depths =
                  switch (v.text("rule")) {
                    case "equal-area" ->
                        InfeedSchedule.equalAreaMm(v.num("depth"), v.count("passes"));
                    case "eased-first" ->
                        InfeedSchedule.easedFirstMm(v.num("depth"), v.count("passes"));
                    default -> InfeedSchedule.equalDepthMm(v.num("depth"), v.count("passes"));
                  };
              Answer answer = Answer.NONE;
              for (int i = 0; i < depths.size(); i++) {
                answer = answer.result("after pass " + (i + 1), LENGTH, depths.get(i));
              }
              return answer;
            },
            InfeedSchedule.class);
  }

  private static Formula passes() {
    return draft("chasing-passes", "usual number of passes of a chased outside thread in steel")
        .law("table by pitch")
        .in("pitch", LENGTH, "pitch P", ABOVE_0)
        .usual(between(0.5, 3), "beyond the table's ends")
        .source("from memory, unverified; stainless 1 to 2 more, brass and aluminium 1 to 2 fewer")
        .example("pitch=1.5mm")
        .by(
            v -> Answer.of("passes", COUNT, ChasingPassTable.passesCount(v.num("pitch"))),
            ChasingPassTable.class);
  }

  private static Formula chaser() {
    return draft("chaser-passes", "passes and run-out of an insert with several teeth")
        .law("passes = ⌈N/teeth⌉; further run-out (teeth − 1)·P")
        .in("passes", COUNT, "passes N of a single point", atLeast(1))
        .in("teeth", COUNT, "teeth behind each other", atLeast(1))
        .in("pitch", LENGTH, "pitch P", ABOVE_0)
        .source("geometry; the division of depth is the insert maker's")
        .example("passes=8 teeth=3 pitch=1.5mm")
        .by(
            v ->
                Answer.of(
                        "passes",
                        COUNT,
                        ChaserPasses.passesCount(v.count("passes"), v.count("teeth")))
                    .result(
                        "further run-out",
                        LENGTH,
                        ChaserPasses.furtherRunOutMm(v.num("pitch"), v.count("teeth"))),
            ChaserPasses.class);
  }

  private static Formula chasing() {
    return draft("chasing-time", "thread chased with a single point, spring passes counted")
        .law("t = (N + spring)·starts·[(l + li + lo)/(lead·n) + tr]")
        .in("length", LENGTH, "length l of thread", ABOVE_0)
        .in("pitch", LENGTH, "pitch P", ABOVE_0)
        .in("starts", COUNT, "starts", atLeast(1), "1")
        .in("passes", COUNT, "passes N with infeed for each start", atLeast(1))
        .in("springPasses", COUNT, "passes without infeed for each start", atLeast(0), "1")
        .in("runIn", LENGTH, "run-in li, see thread-run-in", FROM_0, "2 mm")
        .in("runOut", LENGTH, "run-out lo", FROM_0, "1 mm")
        .in("return", SECONDS, "time tr to lift, return and feed in", FROM_0, "0.5 s")
        .in("spindleSpeed", ROTATION, "spindle speed n", ABOVE_0)
        .source("derived")
        .example("length=15mm pitch=1.5mm passes=6 spindleSpeed=800rev/min")
        .by(
            v -> {
              ChasedThread thread =
                  new ChasedThread(
                      v.num("length"),
                      v.num("runIn"),
                      v.num("runOut"),
                      v.num("pitch") * v.count("starts"),
                      v.count("starts"),
                      v.count("passes"),
                      v.count("springPasses"),
                      v.num("return"));
              return Answer.of("time t", SECONDS, thread.timeS(v.num("spindleSpeed")))
                  .step("passes in all", COUNT, thread.allPassesCount());
            },
            ChasedThread.class);
  }

  private static Formula chasingForce() {
    return draft("chasing-force", "force, torque and power of one pass of a threading point")
        .law("A = tan(φ/2)·(a2² − a1²) + c·(a2 − a1); h = (a2 − a1)·sin(φ/2); Fc = kc(h)·K·A")
        .in("diameter", LENGTH, "diameter of the thread", ABOVE_0)
        .in("from", LENGTH, "depth a1 before the pass", FROM_0)
        .in("to", LENGTH, "depth a2 after the pass", ABOVE_0)
        .in("angle", ANGLE, "angle φ of the thread", inside(0, 120), "60 deg")
        .in("tipFlat", LENGTH, "width c of the point's flat", FROM_0, "0.1 mm")
        .in("passiveShare", FACTOR, "radial force as a share of Fc", between(0, 2), "0.5")
        .with(SpeedInputs::either)
        .with(CutInputs.of(ChipCompression.GROOVING))
        .source("geometry of the V section with the Kienzle force, derived; share from memory")
        .example("diameter=10mm from=0.5mm to=0.6mm speed=90m/min material=C45")
        .by(
            v -> {
              ChasingCut cut =
                  new ChasingCut(
                      v.num("angle"), v.num("tipFlat"), v.num("diameter"), v.num("passiveShare"));
              double revPerMin = SpeedInputs.revPerMin(v, v.num("diameter"));
              return CutInputs.load(
                      v,
                      cut.load(
                          CutInputs.constants(v),
                          CutInputs.corrections(v),
                          v.num("from"),
                          v.num("to"),
                          revPerMin))
                  .step("chip area A", SECTION, cut.areaMm2(v.num("from"), v.num("to")));
            },
            ChasingCut.class);
  }

  private static Formula runIn() {
    return draft("thread-run-in", "way that a slide needs before the lead of a thread is true")
        .law("l ≥ (n·lead/60)²/(2·a) and l ≥ (n·lead/60)/Kv·(ln(1/ε) − 1)")
        .in("spindleSpeed", ROTATION, "spindle speed n", ABOVE_0)
        .in("lead", LENGTH, "lead of the thread", ABOVE_0)
        .in("acceleration", SLIDE_GAIN, "acceleration a of the slide", ABOVE_0)
        .in("loopGain", LOOP_GAIN, "gain Kv of the position loop", ABOVE_0, "33")
        .usual(between(15, 200), "not a usual position loop")
        .in("leadError", FACTOR, "lead error ε allowed at the first thread", inside(0, 1), "0.01")
        .source("derived for a first-order position loop; gain from memory")
        .example("spindleSpeed=1000rev/min lead=1.5mm acceleration=5m/s²")
        .by(
            v -> {
              double mechanicalMm =
                  ThreadRunIn.accelerationMm(
                      v.num("spindleSpeed"), v.num("lead"), v.num("acceleration"));
              double loopMm =
                  ThreadRunIn.positionLoopMm(
                      v.num("spindleSpeed"), v.num("lead"), v.num("loopGain"), v.num("leadError"));
              return Answer.of("run-in", LENGTH, Math.max(mechanicalMm, loopMm))
                  .step("for the acceleration", LENGTH, mechanicalMm)
                  .step("for the position loop", LENGTH, loopMm);
            },
            ThreadRunIn.class);
  }

  private static Formula limit() {
    return draft("thread-speed-limit", "highest spindle speed at which a slide follows a lead")
        .law("n = v/lead")
        .in("lead", LENGTH, "lead of the thread", ABOVE_0)
        .in("slideSpeed", SLIDE_FEED, "highest feed v of the slide", ABOVE_0)
        .source("kinematics")
        .example("lead=1.5mm slideSpeed=6000mm/min")
        .by(
            v ->
                Answer.of(
                    "spindle speed n",
                    ROTATION,
                    ThreadRunIn.limitRevPerMin(v.num("lead"), v.num("slideSpeed"))),
            ThreadRunIn.class);
  }

  private static Formula dieHead() {
    return draft("die-head-time", "thread cut or rolled in one axial pass, the head opens")
        .law("t = (la + l + e)/(lead·n) + to")
        .in("length", LENGTH, "length l of thread", ABOVE_0)
        .in("diameter", LENGTH, "diameter of the thread", ABOVE_0)
        .in("pitch", LENGTH, "lead of the thread", ABOVE_0)
        .with(SpeedInputs::either)
        .in("chaserLead", LENGTH, "length e of the chasers' or rolls' lead", FROM_0, "3 mm")
        .in("approach", LENGTH, "approach la at the thread's lead", FROM_0, "1 mm")
        .in("open", SECONDS, "time to for the head to open", FROM_0, "0.3 s")
        .source("derived; [SHARMA] problem 4.22 for the bare pass; opening time from memory")
        .example(
            "length=15mm diameter=10mm pitch=1.5mm speed=8m/min chaserLead=0 approach=0 open=0s")
        .by(
            v -> {
              double revPerMin = SpeedInputs.revPerMin(v, v.num("diameter"));
              return Answer.of(
                      "time t",
                      SECONDS,
                      new DieHeadPass(
                              v.num("length"),
                              v.num("chaserLead"),
                              v.num("approach"),
                              v.num("pitch"),
                              v.num("open"))
                          .timeS(revPerMin))
                  .step("spindle speed n", ROTATION, revPerMin);
            },
            DieHeadPass.class);
  }
}
