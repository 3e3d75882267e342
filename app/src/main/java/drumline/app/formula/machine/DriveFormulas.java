package drumline.app.formula.machine;

import static drumline.app.formula.Allowed.ABOVE_0;
import static drumline.app.formula.Allowed.FROM_0;
import static drumline.app.formula.Allowed.aboveTo;
import static drumline.app.formula.Allowed.atLeast;
import static drumline.app.formula.Measure.FACTOR;
import static drumline.app.formula.Measure.INERTIA;
import static drumline.app.formula.Measure.POWER;
import static drumline.app.formula.Measure.ROTATION;
import static drumline.app.formula.Measure.ROTATION_GAIN;
import static drumline.app.formula.Measure.SECONDS;
import static drumline.app.formula.Measure.SHARE;
import static drumline.app.formula.Measure.TORQUE;
import static drumline.app.formula.Topic.DRIVES;

import drumline.app.formula.Answer;
import drumline.app.formula.Formula;
import drumline.app.formula.FormulaDraft;
import drumline.app.formula.Values;
import drumline.cutting.drive.LiveToolCurve;
import drumline.cutting.drive.RunUpTime;
import drumline.cutting.drive.ShortTimeOverload;
import drumline.cutting.drive.ShortTimeOverload.Stretch;
import drumline.cutting.drive.SpindleCurve;
import drumline.cutting.validity.Validity;
import java.util.ArrayList;
import java.util.List;

/** What a drive can give. */
final class DriveFormulas {
  private static final String MAKER = "; the machine maker's figures go before these";

  private DriveFormulas() {}

  static List<Formula> all() {
    return List.of(curve(), liveTool(), runUp(), runUpInertia(), overload(), equivalent());
  }

  private static FormulaDraft draft(String name, String title) {
    return Formula.named(DRIVES, name, title);
  }

  private static FormulaDraft motor(FormulaDraft draft) {
    return draft
        .in("power", POWER, "rated power Pr", ABOVE_0)
        .in("baseSpeed", ROTATION, "base speed nb", ABOVE_0)
        .in("maxSpeed", ROTATION, "highest speed nmax", ABOVE_0)
        .optional("dropSpeed", ROTATION, "speed nd at which power begins to fall", ABOVE_0);
  }

  private static SpindleCurve motor(Values v) {
    return new SpindleCurve(
        v.num("power"),
        v.num("baseSpeed"),
        v.num("dropSpeed", v.num("maxSpeed")),
        v.num("maxSpeed"));
  }

  private static Formula curve() {
    return draft(
            "spindle-curve", "torque and power of a spindle at a speed, and how far it is used")
        .law("M = 30000·Pr/(π·nb) to nb; P = Pr to nd; P = Pr·nd/n to nmax")
        .with(DriveFormulas::motor)
        .in("spindleSpeed", ROTATION, "speed n", FROM_0)
        .in("torque", TORQUE, "torque that the cut asks for", FROM_0, "0 Nm")
        .source("usual curve of field-weakened spindle motors, from memory" + MAKER)
        .example(
            "power=11kW baseSpeed=1500rev/min maxSpeed=6000rev/min spindleSpeed=3000rev/min torque=20Nm")
        .by(
            v -> {
              SpindleCurve curve = motor(v);
              double revPerMin = v.num("spindleSpeed");
              return Answer.of("torque at the speed", TORQUE, curve.torqueNm(revPerMin))
                  .step("rated torque", TORQUE, curve.ratedTorqueNm())
                  .result("power at the speed", POWER, curve.powerKw(revPerMin))
                  .result("used", SHARE, 100 * curve.useRatio(v.num("torque"), revPerMin))
                  .noting(
                      Validity.of(
                          "torque of the cut",
                          v.num("torque"),
                          0,
                          curve.torqueNm(revPerMin),
                          "N·m",
                          "the drive cannot hold it"));
            },
            SpindleCurve.class,
            Validity.class);
  }

  private static Formula liveTool() {
    return draft("live-tool-curve", "torque and power at a live tool behind its gearing")
        .law("nt = i·nm; Mt = Mm(nt/i)/i·η, never above the holder's limits")
        .with(DriveFormulas::motor)
        .in("ratio", FACTOR, "tool speed to motor speed i", ABOVE_0, "1")
        .in("efficiency", FACTOR, "efficiency η", aboveTo(0, 1), "0.85")
        .in("holderSpeed", ROTATION, "highest speed of the tool holder", ABOVE_0)
        .in("holderTorque", TORQUE, "highest torque of the tool holder", ABOVE_0)
        .in("toolSpeed", ROTATION, "tool speed nt", FROM_0)
        .source("gearing; efficiency from memory" + MAKER)
        .example(
            "power=3kW baseSpeed=2000rev/min maxSpeed=6000rev/min holderSpeed=6000rev/min"
                + " holderTorque=10Nm toolSpeed=4000rev/min")
        .by(
            v -> {
              LiveToolCurve curve =
                  new LiveToolCurve(
                      motor(v),
                      v.num("ratio"),
                      v.num("efficiency"),
                      v.num("holderSpeed"),
                      v.num("holderTorque"));
              return Answer.of("torque at the tool", TORQUE, curve.torqueNm(v.num("toolSpeed")))
                  .step("highest tool speed", ROTATION, curve.maxRevPerMin())
                  .result("power at the tool", POWER, curve.powerKw(v.num("toolSpeed")));
            },
            LiveToolCurve.class);
  }

  private static FormulaDraft change(FormulaDraft draft) {
    return draft
        .in("fromSpeed", ROTATION, "speed before", FROM_0)
        .in("toSpeed", ROTATION, "speed after", FROM_0);
  }

  private static Formula runUp() {
    return draft("run-up-time", "time to change a spindle's speed at constant acceleration")
        .law("t = |n2 − n1|/α")
        .with(DriveFormulas::change)
        .in("acceleration", ROTATION_GAIN, "acceleration α", ABOVE_0)
        .source("kinematics")
        .example("fromSpeed=0 toSpeed=4000rev/min acceleration=2000rev/min/s")
        .by(
            v ->
                Answer.of(
                    "time t",
                    SECONDS,
                    RunUpTime.constantS(
                        v.num("fromSpeed"), v.num("toSpeed"), v.num("acceleration"))),
            RunUpTime.class);
  }

  private static Formula runUpInertia() {
    return draft(
            "run-up-time-by-torque", "time to change a spindle's speed from its curve and inertia")
        .law("t = J·∫ dω/M(ω)")
        .with(DriveFormulas::motor)
        .in("inertia", INERTIA, "moment of inertia J of spindle, chuck and bar", ABOVE_0)
        .with(DriveFormulas::change)
        .source(
            "Newton's law for rotation, checked by numerical integration; braking as strong as driving")
        .example(
            "power=11kW baseSpeed=1500rev/min maxSpeed=6000rev/min inertia=0.08kgm² fromSpeed=0"
                + " toSpeed=4000rev/min")
        .by(
            v ->
                Answer.of(
                        "time t",
                        SECONDS,
                        RunUpTime.ofCurveS(
                            motor(v), v.num("inertia"), v.num("fromSpeed"), v.num("toSpeed")))
                    .step("rated torque", TORQUE, motor(v).ratedTorqueNm()),
            RunUpTime.class);
  }

  private static Formula overload() {
    return draft(
            "short-time-overload", "load allowed above rating where a drive works part of the time")
        .law("M/Mr ≤ 1/√δ, never above the peak")
        .in("duty", SHARE, "share δ of the cycle under load", aboveTo(0, 100))
        .in("peak", FACTOR, "peak torque of the drive to its rating", atLeast(1), "1.5")
        .source("equivalent torque of intermittent duty [IEC-60034-1], from memory" + MAKER)
        .example("duty=40%")
        .by(
            v ->
                Answer.of(
                    "load to rating",
                    FACTOR,
                    ShortTimeOverload.allowedRatio(v.num("duty") / 100, v.num("peak"))),
            ShortTimeOverload.class);
  }

  private static Formula equivalent() {
    return draft("equivalent-torque", "torque that heats a drive as much as the loads of a cycle")
        .law("Mrms = √(Σ Mi²·ti/T)")
        .several("torques", TORQUE, "torques Mi, one for each time", FROM_0)
        .several("times", SECONDS, "times ti", ABOVE_0)
        .in("cycle", SECONDS, "cycle T", ABOVE_0)
        .source("equivalent torque of intermittent duty [IEC-60034-1], from memory" + MAKER)
        .example("torques=60Nm:30Nm times=2s:3s cycle=8s")
        .by(
            v -> {
              List<Double> torques = v.nums("torques");
              List<Double> times = v.nums("times");
              requireAsMany("times", times.size(), torques.size());
              List<Stretch> stretches = new ArrayList<>();
              for (int i = 0; i < torques.size(); i++) {
                stretches.add(new Stretch(torques.get(i), times.get(i)));
              }
              return Answer.of(
                  "equivalent torque",
                  TORQUE,
                  ShortTimeOverload.equivalentNm(stretches, v.num("cycle")));
            },
            ShortTimeOverload.class);
  }

  /**
   * Refuses lists of different lengths.
   *
   * @throws IllegalArgumentException if the counts differ
   */
  static void requireAsMany(String key, int found, int wanted) {
    if (found != wanted) {
      throw new IllegalArgumentException(
          key + " is " + found + " values; allowed is " + wanted + ", one for each other value.");
    }
  }
}
