package drumline.app.formula.cut;

import static drumline.app.formula.Allowed.ABOVE_0;
import static drumline.app.formula.Allowed.FROM_0;
import static drumline.app.formula.Allowed.between;
import static drumline.app.formula.Allowed.inside;
import static drumline.app.formula.Measure.AMOUNT;
import static drumline.app.formula.Measure.ANGLE;
import static drumline.app.formula.Measure.FACTOR;
import static drumline.app.formula.Measure.FEED;
import static drumline.app.formula.Measure.LENGTH;
import static drumline.app.formula.Measure.REMOVAL_RATE;
import static drumline.app.formula.Measure.ROTATION;
import static drumline.app.formula.Measure.ROTATION_GAIN;
import static drumline.app.formula.Measure.SECONDS;
import static drumline.app.formula.Measure.SPEED;
import static drumline.app.formula.Topic.TURNING;

import drumline.app.formula.Answer;
import drumline.app.formula.Formula;
import drumline.app.formula.FormulaDraft;
import drumline.app.formula.Values;
import drumline.cutting.drive.SpindleSpeed;
import drumline.cutting.force.ChipCompression;
import drumline.cutting.force.ChipSection;
import drumline.cutting.force.CuttingLoad;
import drumline.cutting.force.ForceSplit;
import drumline.cutting.turning.AcceleratedFacing;
import drumline.cutting.turning.FormToolCut;
import drumline.cutting.turning.StraightPass;
import drumline.cutting.turning.SurfaceSpeed;
import drumline.cutting.turning.SurfaceSpeedArc;
import drumline.cutting.turning.SurfaceSpeedFacing;
import drumline.cutting.turning.SurfaceSpeedTaper;
import drumline.cutting.turning.TurningCut;
import java.util.List;

/** Turning, facing, boring, form tools. */
final class TurningFormulas {
  private static final String CONSTANT_SPEED =
      "derived from the cutting speed, checked by numerical integration; worked problem [SHARMA] 4.13."
          + " Never without a highest speed: the least of machine, collet, bar and tool";

  private TurningFormulas() {}

  static List<Formula> all() {
    return List.of(
        spindleSpeed(),
        surfaceSpeed(),
        pass(),
        facing(),
        accelerated(),
        taper(),
        arc(),
        turningForce(),
        formTool());
  }

  private static FormulaDraft draft(String name, String title) {
    return Formula.named(TURNING, name, title);
  }

  private static Formula spindleSpeed() {
    return draft("spindle-speed", "spindle speed for a cutting speed")
        .law("n = 1000·vc/(π·d)")
        .in("speed", SPEED, "cutting speed vc", ABOVE_0)
        .in("diameter", LENGTH, "diameter d", ABOVE_0)
        .source("[TSCH] Dietrich and Tschätsch, 11th edition; worked example [ESKC]")
        .example("speed=200m/min diameter=105mm")
        .by(
            v ->
                Answer.of(
                    "spindle speed n",
                    ROTATION,
                    SpindleSpeed.revPerMin(v.num("speed"), v.num("diameter"))),
            SpindleSpeed.class);
  }

  private static Formula surfaceSpeed() {
    return draft("surface-speed", "cutting speed at a spindle speed")
        .law("vc = π·d·n/1000")
        .in("spindleSpeed", ROTATION, "spindle speed n", FROM_0)
        .in("diameter", LENGTH, "diameter d", FROM_0)
        .source("[TSCH] Dietrich and Tschätsch, 11th edition; worked example [QAMM]")
        .example("spindleSpeed=400rev/min diameter=75mm")
        .by(
            v ->
                Answer.of(
                    "cutting speed vc",
                    SPEED,
                    SpindleSpeed.mPerMin(v.num("spindleSpeed"), v.num("diameter"))),
            SpindleSpeed.class);
  }

  private static Formula pass() {
    return draft("turning-time", "time of a straight pass at constant spindle speed")
        .law("t = (la + l + lo)/(f·n)")
        .in("length", LENGTH, "length l in cut", ABOVE_0)
        .in("diameter", LENGTH, "diameter on which the cutting speed counts", ABOVE_0)
        .in("feed", FEED, "feed f", ABOVE_0)
        .usual(between(0.02, 0.6), "seldom on small lathes")
        .with(SpeedInputs::either)
        .in("approach", LENGTH, "approach la at feed", FROM_0, "1 mm")
        .in("overrun", LENGTH, "overrun lo", FROM_0, "0 mm")
        .source("[SHARMA] problem 4.12; approach 0.5 to 2 mm and overrun to 1 mm from memory")
        .example("length=32mm diameter=38mm feed=0.375mm/rev speed=60m/min approach=0")
        .by(
            v -> {
              double revPerMin = SpeedInputs.revPerMin(v, v.num("diameter"));
              StraightPass pass =
                  new StraightPass(
                      v.num("length"), v.num("approach"), v.num("overrun"), v.num("feed"));
              return Answer.of("time t", SECONDS, pass.timeS(revPerMin))
                  .step("spindle speed n", ROTATION, revPerMin)
                  .step("revolutions", AMOUNT, pass.revolutionsCount());
            },
            StraightPass.class);
  }

  private static FormulaDraft clamped(FormulaDraft draft) {
    return draft
        .in("feed", FEED, "feed f", ABOVE_0)
        .in("speed", SPEED, "cutting speed vc", ABOVE_0)
        .in("maxSpeed", ROTATION, "highest spindle speed", ABOVE_0)
        .in("minSpeed", ROTATION, "lowest spindle speed", FROM_0, "0 rev/min");
  }

  static SurfaceSpeed speed(Values v) {
    return new SurfaceSpeed(v.num("speed"), v.num("minSpeed"), v.num("maxSpeed"));
  }

  private static SurfaceSpeedFacing facing(Values v) {
    return new SurfaceSpeedFacing(
        v.num("outerDiameter") / 2, v.num("innerDiameter") / 2, v.num("feed"));
  }

  private static Answer speeds(Values v, double startMm, double endMm) {
    SurfaceSpeed speed = speed(v);
    return Answer.NONE
        .step("diameter below which the highest speed holds", LENGTH, 2 * speed.clampRadiusMm())
        .step("spindle speed at the larger diameter", ROTATION, speed.revPerMin(startMm / 2))
        .step("spindle speed at the smaller diameter", ROTATION, speed.revPerMin(endMm / 2));
  }

  private static FormulaDraft diameters(FormulaDraft draft) {
    return clamped(
        draft
            .in("outerDiameter", LENGTH, "larger diameter 2·R0", ABOVE_0)
            .in("innerDiameter", LENGTH, "smaller diameter 2·R1; 0 to the centre", FROM_0, "0 mm"));
  }

  private static Formula facing() {
    return draft("facing-time", "facing at constant surface speed, clamped at the highest speed")
        .law(
            "rc = 1000·vc/(2π·nmax); ra = min(R0, max(R1, rc)); "
                + "t = π·(R0² − ra²)/(1000·vc·f) + (ra − R1)/(nmax·f)")
        .with(TurningFormulas::diameters)
        .source(CONSTANT_SPEED)
        .example(
            "outerDiameter=250mm innerDiameter=100mm feed=0.8mm/rev speed=27m/min"
                + " maxSpeed=1000rev/min")
        .by(
            v ->
                speeds(v, v.num("outerDiameter"), v.num("innerDiameter"))
                    .result("time t", SECONDS, facing(v).timeS(speed(v)))
                    .result(
                        "constant speed of the same time",
                        ROTATION,
                        facing(v).equalTimeRevPerMin(speed(v))),
            SurfaceSpeedFacing.class,
            SurfaceSpeed.class);
  }

  private static Formula accelerated() {
    return draft("facing-time-real-drive", "facing inwards with a drive that cannot follow")
        .law("wanted acceleration f·n²/r, n in 1/s; below the lag radius the spindle gains only α")
        .with(TurningFormulas::diameters)
        .in("acceleration", ROTATION_GAIN, "acceleration α of the spindle", ABOVE_0)
        .source("derived, checked against a step-by-step twin; on short cuts use constant speed")
        .example(
            "outerDiameter=20mm innerDiameter=0 feed=0.05mm/rev speed=200m/min"
                + " maxSpeed=6000rev/min acceleration=2000rev/min/s")
        .by(
            v -> {
              AcceleratedFacing real = new AcceleratedFacing(facing(v), v.num("acceleration"));
              return speeds(v, v.num("outerDiameter"), v.num("innerDiameter"))
                  .step(
                      "diameter where the drive begins to lag",
                      LENGTH,
                      2 * real.lagRadiusMm(speed(v)))
                  .result("time t", SECONDS, real.timeS(speed(v)))
                  .result("time of an ideal drive", SECONDS, facing(v).timeS(speed(v)));
            },
            AcceleratedFacing.class);
  }

  private static Formula taper() {
    return draft("taper-time", "a taper turned at constant surface speed")
        .law("t = π·(R1 + R2)·s/(1000·f·vc) without clamps, s the slant length")
        .in("startDiameter", LENGTH, "diameter at one end", FROM_0)
        .in("endDiameter", LENGTH, "diameter at the other end", FROM_0)
        .in("length", LENGTH, "length along the axis", FROM_0)
        .with(TurningFormulas::clamped)
        .source("derived, checked by numerical integration; worked problem [STUDYZIN]")
        .example(
            "startDiameter=150mm endDiameter=300mm length=900mm feed=0.25mm/rev speed=200m/min"
                + " maxSpeed=3000rev/min")
        .by(
            v -> {
              SurfaceSpeedTaper taper =
                  new SurfaceSpeedTaper(
                      v.num("startDiameter"), v.num("endDiameter"), v.num("length"), v.num("feed"));
              double large = Math.max(v.num("startDiameter"), v.num("endDiameter"));
              double small = Math.min(v.num("startDiameter"), v.num("endDiameter"));
              return speeds(v, large, small)
                  .step("slant length s", LENGTH, taper.slantMm())
                  .result("time t", SECONDS, taper.timeS(speed(v)));
            },
            SurfaceSpeedTaper.class);
  }

  private static Formula arc() {
    return draft("arc-time", "a radius or ball turned at constant surface speed")
        .law("t = ∫ ρ·dθ/(f·n(r)), r = Rc + ρ·sin θ")
        .in("centreRadius", LENGTH, "distance Rc of the arc's centre from the axis", FROM_0)
        .in("arcRadius", LENGTH, "radius ρ of the arc", ABOVE_0)
        .in("from", ANGLE, "smaller angle against the axis' direction", between(-90, 90))
        .in("to", ANGLE, "larger angle", between(-90, 90))
        .with(TurningFormulas::clamped)
        .source("derived, checked by numerical integration; two arcs where it passes 90°")
        .example(
            "centreRadius=0 arcRadius=10mm from=0deg to=90deg feed=0.1mm/rev speed=150m/min"
                + " maxSpeed=5000rev/min")
        .by(
            v -> {
              SurfaceSpeedArc arc =
                  new SurfaceSpeedArc(
                      v.num("centreRadius"),
                      v.num("arcRadius"),
                      v.num("from"),
                      v.num("to"),
                      v.num("feed"));
              return Answer.of("time t", SECONDS, arc.timeS(speed(v)))
                  .step("length of the arc", LENGTH, arc.lengthMm());
            },
            SurfaceSpeedArc.class);
  }

  private static Formula turningForce() {
    return draft("turning-force", "force, torque and power of a turning, boring or facing pass")
        .law("Fc = kc1.1·h^−mc·K·ap·f, h = f·sin κ; Pc = Fc·vc/60000; M = Fc·d/2000; Q = ap·f·vc")
        .in("diameter", LENGTH, "diameter d on which the cutting speed counts", ABOVE_0)
        .in("depth", LENGTH, "depth of cut ap", ABOVE_0)
        .in("feed", FEED, "feed f", ABOVE_0)
        .with(SpeedInputs::either)
        .in("edgeAngle", ANGLE, "angle κ between edge and feed", inside(0, 180), "90 deg")
        .in("feedShare", FACTOR, "feed force as a share of Fc", between(0, 2), "0.4")
        .usual(between(0.2, 0.7), "seldom measured")
        .in("passiveShare", FACTOR, "passive force as a share of Fc", between(0, 2), "0.3")
        .usual(between(0.2, 0.7), "seldom measured")
        .choice("along", "direction of the feed", TurningCut.Along.AXIS)
        .with(CutInputs.of(ChipCompression.OUTSIDE_TURNING))
        .source(
            "[TSCH] Dietrich and Tschätsch, 11th edition; worked example [ESKC]; shares from memory;"
                + " uncertainty 20 %")
        .example(
            "diameter=105mm depth=1mm feed=0.15mm/rev speed=200m/min edgeAngle=95deg kc11=2300MPa"
                + " mc=0.21")
        .by(
            v -> {
              TurningCut cut =
                  new TurningCut(
                      v.num("diameter"),
                      new ChipSection(v.num("depth"), v.num("feed"), v.num("edgeAngle")),
                      new ForceSplit(v.num("feedShare"), v.num("passiveShare")),
                      v.choice("along", TurningCut.Along.class));
              double revPerMin = SpeedInputs.revPerMin(v, v.num("diameter"));
              return CutInputs.load(
                      v, cut.load(CutInputs.constants(v), CutInputs.corrections(v), revPerMin))
                  .step("spindle speed n", ROTATION, revPerMin)
                  .result(
                      "removal rate Q", REMOVAL_RATE, cut.removalCm3PerMin(revPerMin) * 1000 / 60);
            },
            TurningCut.class,
            ForceSplit.class,
            CuttingLoad.class);
  }

  private static Formula formTool() {
    return draft("form-tool-force", "force of a form tool plunged in from the cross slide")
        .law("Fc = kc·K·b·f, h = f; radial force = rp·Fc; M = Fc·d/2000")
        .in("edgeLength", LENGTH, "developed length b of the edge in cut", ABOVE_0)
        .in("width", LENGTH, "width along the axis", ABOVE_0)
        .in("diameter", LENGTH, "largest diameter in cut", ABOVE_0)
        .in("smallestDiameter", LENGTH, "smallest diameter that is left", ABOVE_0)
        .in("feed", FEED, "feed f", ABOVE_0)
        .usual(between(0.01, 0.06), "form tools chatter or rub there")
        .with(SpeedInputs::either)
        .in("passiveShare", FACTOR, "radial force as a share of Fc", between(0, 2), "0.65")
        .with(CutInputs.of(ChipCompression.GROOVING))
        .source("[TSCH] Dietrich and Tschätsch, 11th edition; share and 2.5 times rule from memory")
        .example(
            "edgeLength=14mm width=12mm diameter=20mm smallestDiameter=14mm feed=0.03mm/rev"
                + " speed=120m/min material=11SMn30")
        .by(
            v -> {
              FormToolCut cut =
                  new FormToolCut(
                      v.num("edgeLength"),
                      v.num("width"),
                      v.num("diameter"),
                      v.num("smallestDiameter"),
                      v.num("feed"),
                      v.num("passiveShare"));
              double revPerMin = SpeedInputs.revPerMin(v, v.num("diameter"));
              return CutInputs.load(
                  v, cut.load(CutInputs.constants(v), CutInputs.corrections(v), revPerMin));
            },
            FormToolCut.class);
  }
}
