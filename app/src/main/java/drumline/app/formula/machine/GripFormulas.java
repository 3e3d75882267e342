package drumline.app.formula.machine;

import static drumline.app.formula.Allowed.ABOVE_0;
import static drumline.app.formula.Allowed.FROM_0;
import static drumline.app.formula.Allowed.aboveTo;
import static drumline.app.formula.Allowed.atLeast;
import static drumline.app.formula.Allowed.between;
import static drumline.app.formula.Allowed.inside;
import static drumline.app.formula.Measure.ANGLE;
import static drumline.app.formula.Measure.FACTOR;
import static drumline.app.formula.Measure.FORCE;
import static drumline.app.formula.Measure.LENGTH;
import static drumline.app.formula.Measure.MASS;
import static drumline.app.formula.Measure.ROTATION;
import static drumline.app.formula.Measure.TORQUE;
import static drumline.app.formula.Topic.GRIPPING;

import drumline.app.formula.Answer;
import drumline.app.formula.Formula;
import drumline.app.formula.FormulaDraft;
import drumline.cutting.clamping.CentrifugalForce;
import drumline.cutting.clamping.ColletForce;
import drumline.cutting.clamping.RequiredGrip;
import drumline.cutting.clamping.SlipSafety;
import drumline.cutting.clamping.TurningGrip;
import drumline.cutting.validity.Validity;
import java.util.List;

/** What collet and chuck hold. */
final class GripFormulas {
  private static final String CAUTION =
      ". Work that slips or is thrown injures: the plate on chuck or collet goes before this, and grip"
          + " is measured on the machine";

  private GripFormulas() {}

  static List<Formula> all() {
    return List.of(centrifugal(), collet(), turning(), required(), slip());
  }

  private static FormulaDraft draft(String name, String title) {
    return Formula.named(GRIPPING, name, title);
  }

  private static FormulaDraft jaws(FormulaDraft draft) {
    return draft
        .in("mass", MASS, "mass m of all jaws or segments together", FROM_0)
        .in("radius", LENGTH, "distance r of their centre of gravity from the axis", FROM_0);
  }

  private static Formula centrifugal() {
    return draft("centrifugal-force", "pull of turning jaws, segments or an eccentric mass")
        .law("F = m·r·(π·n/30)²")
        .with(GripFormulas::jaws)
        .in("spindleSpeed", ROTATION, "speed n", FROM_0)
        .source("[VDI-3106] as quoted by [SCHUNK]; mechanics" + CAUTION)
        .example("mass=0.6kg radius=40mm spindleSpeed=4000rev/min")
        .by(
            v ->
                Answer.of(
                    "force F",
                    FORCE,
                    CentrifugalForce.forceN(v.num("mass"), v.num("radius"), v.num("spindleSpeed"))),
            CentrifugalForce.class);
  }

  private static Formula collet() {
    return draft("collet-force", "radial grip from the force that closes a taper collet")
        .law("F = Fdraw/tan(α + ρ), ρ = atan μ")
        .in("drawForce", FORCE, "closing force Fdraw", FROM_0)
        .in("taperAngle", ANGLE, "angle α between taper and axis", inside(0, 60), "15 deg")
        .in("friction", FACTOR, "friction μ in the taper", between(0, 0.5), "0.12")
        .source("wedge with friction; angle and friction from memory" + CAUTION)
        .example("drawForce=12kN")
        .by(
            v ->
                Answer.of(
                    "radial grip F",
                    FORCE,
                    ColletForce.radialN(
                        v.num("drawForce"), v.num("taperAngle"), v.num("friction"))),
            ColletForce.class);
  }

  private static Formula turning() {
    return draft("turning-grip", "grip that is left at speed, and the speed limit that follows")
        .law("F = F0 − Fc outside, F0 + Fc inside; limit Fc ≤ 0.67·F0 (EN 1550)")
        .in("standingGrip", FORCE, "radial grip F0 at standstill", ABOVE_0)
        .with(GripFormulas::jaws)
        .choice("side", "side on which the work is gripped", TurningGrip.Side.OUTSIDE)
        .in("spindleSpeed", ROTATION, "speed n", FROM_0)
        .in("requiredGrip", FORCE, "grip that must be left", FROM_0, "0 N")
        .source("[VDI-3106] and [EN-1550] as quoted by [SCHUNK] and [OPTIMUM]" + CAUTION)
        .example(
            "standingGrip=30kN mass=0.6kg radius=40mm spindleSpeed=4000rev/min requiredGrip=15kN")
        .by(
            v -> {
              TurningGrip grip =
                  new TurningGrip(
                      v.num("standingGrip"),
                      v.num("mass"),
                      v.num("radius"),
                      v.choice("side", TurningGrip.Side.class));
              double revPerMin = v.num("spindleSpeed");
              return Answer.of("grip at speed", FORCE, grip.gripN(revPerMin))
                  .step(
                      "centrifugal force",
                      FORCE,
                      CentrifugalForce.forceN(v.num("mass"), v.num("radius"), revPerMin))
                  .result("highest speed by EN 1550", ROTATION, grip.en1550RevPerMin())
                  .result(
                      "speed at which the required grip is just left",
                      ROTATION,
                      grip.referenceRevPerMin(v.num("requiredGrip")))
                  .noting(grip.validity(revPerMin));
            },
            TurningGrip.class);
  }

  private static Formula required() {
    return draft("required-grip", "grip that must be set at standstill")
        .law("Fsp = Sz·Fspz; Fsp0 = Ssp·(Fsp + Fc) outside, Ssp·(Fsp − Fc) inside")
        .in("cuttingGrip", FORCE, "grip Fspz that just holds the cutting forces", FROM_0)
        .in("cuttingSafety", FACTOR, "safety Sz of the cutting forces", atLeast(1), "2")
        .usual(atLeast(1.5), "below the least of VDI 3106")
        .in("gripSafety", FACTOR, "safety Ssp of the grip", atLeast(1), "1.5")
        .usual(atLeast(1.5), "below the least of VDI 3106")
        .with(GripFormulas::jaws)
        .in("spindleSpeed", ROTATION, "speed n", FROM_0)
        .choice("side", "side on which the work is gripped", TurningGrip.Side.OUTSIDE)
        .source(
            "[VDI-3106] as quoted by [SCHUNK] and [OPTIMUM]; Sz 2.0 new, 2.4 old chuck [RN1391] p. 46"
                + CAUTION)
        .example("cuttingGrip=6kN mass=0.6kg radius=40mm spindleSpeed=3000rev/min")
        .by(
            v -> {
              RequiredGrip grip =
                  new RequiredGrip(
                      v.num("cuttingGrip"), v.num("cuttingSafety"), v.num("gripSafety"));
              double pull =
                  CentrifugalForce.forceN(v.num("mass"), v.num("radius"), v.num("spindleSpeed"));
              return Answer.of(
                      "grip at standstill Fsp0",
                      FORCE,
                      grip.standingN(pull, v.choice("side", TurningGrip.Side.class)))
                  .step("grip in turning Fsp", FORCE, grip.turningN())
                  .step("centrifugal force Fc", FORCE, pull);
            },
            RequiredGrip.class);
  }

  private static Formula slip() {
    return draft("slip-safety", "whether the work slips under torque and thrust together")
        .law("S = μ·F/√((2·M/d)² + Fa²)")
        .in("grip", FORCE, "total radial grip F at speed", FROM_0)
        .in("friction", FACTOR, "friction μ between grip and work", aboveTo(0, 1), "0.12")
        .usual(between(0.08, 0.4), "not a usual grip on metal")
        .in("diameter", LENGTH, "gripped diameter d", ABOVE_0)
        .in("torque", TORQUE, "torque M of all tools at the spindle", FROM_0)
        .in("thrust", FORCE, "force Fa along the axis", FROM_0)
        .in("wanted", FACTOR, "safety that is wanted", atLeast(1), "2")
        .source(
            "derived; at least 1.5 by [VDI-3106], 2 new and 2.4 old chuck [RN1391] p. 46" + CAUTION)
        .example("grip=15kN friction=0.15 diameter=20mm torque=2.64Nm thrust=1125N")
        .by(
            v -> {
              SlipSafety slip = new SlipSafety(v.num("grip"), v.num("friction"), v.num("diameter"));
              SlipSafety.Demand demand = new SlipSafety.Demand(v.num("torque"), v.num("thrust"));
              double safety = slip.safetyRatio(demand);
              return Answer.of("safety S", FACTOR, safety)
                  .step("torque alone that it holds", TORQUE, slip.torqueCapacityNm())
                  .step("thrust alone that it holds", FORCE, slip.thrustCapacityN())
                  .step("resultant at the grip", FORCE, slip.resultantN(demand))
                  .result(
                      "grip for the wanted safety",
                      FORCE,
                      slip.requiredGripN(demand, v.num("wanted")))
                  .noting(
                      Validity.of(
                          "safety",
                          safety,
                          v.num("wanted"),
                          Double.POSITIVE_INFINITY,
                          "",
                          "raise the grip, support the work or cut less"));
            },
            SlipSafety.class);
  }
}
