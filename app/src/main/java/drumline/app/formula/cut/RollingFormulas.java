package drumline.app.formula.cut;

import static drumline.app.formula.Allowed.ABOVE_0;
import static drumline.app.formula.Allowed.between;
import static drumline.app.formula.Measure.AMOUNT;
import static drumline.app.formula.Measure.COUNT;
import static drumline.app.formula.Measure.FACTOR;
import static drumline.app.formula.Measure.FEED;
import static drumline.app.formula.Measure.FORCE;
import static drumline.app.formula.Measure.LENGTH;
import static drumline.app.formula.Measure.ROTATION;
import static drumline.app.formula.Measure.SECONDS;
import static drumline.app.formula.Measure.SHARE;
import static drumline.app.formula.Measure.STRESS;
import static drumline.app.formula.Topic.THREADING;

import drumline.app.formula.Answer;
import drumline.app.formula.Formula;
import drumline.app.formula.FormulaDraft;
import drumline.cutting.threading.RollingForce;
import drumline.cutting.threading.ThreadRolling;
import drumline.cutting.validity.Validity;
import java.util.List;

/** Threads rolled from the side. */
final class RollingFormulas {
  private static final String CAUTION = "; the rolls' and head maker's limits go before this";

  private RollingFormulas() {}

  static List<Formula> all() {
    return List.of(radial(), tangential(), force(), material());
  }

  private static FormulaDraft draft(String name, String title) {
    return Formula.named(THREADING, name, title);
  }

  private static Formula radial() {
    return draft(
            "radial-rolling-time", "thread rolled by a radial head; an axial one is die-head-time")
        .law("t = Nw/n")
        .in("diameter", LENGTH, "diameter of the blank", ABOVE_0)
        .in("revolutions", AMOUNT, "revolutions Nw of the work under the rolls", ABOVE_0, "20")
        .usual(between(10, 30), "not usual for rolling")
        .with(SpeedInputs::either)
        .source("kinematics; 10 to 30 revolutions, 30 to 60 m/min in steel from memory" + CAUTION)
        .example("diameter=9mm speed=40m/min")
        .by(
            v -> {
              double revPerMin = SpeedInputs.revPerMin(v, v.num("diameter"));
              return Answer.of(
                      "time t", SECONDS, ThreadRolling.radialS(v.num("revolutions"), revPerMin))
                  .step("spindle speed n", ROTATION, revPerMin);
            },
            ThreadRolling.class);
  }

  private static Formula tangential() {
    return draft(
            "tangential-rolling-time", "thread rolled by a tangential head that passes the work")
        .law("travel from the rolls' and blank's diameters and the depth; t = travel/(f·n)")
        .in("rollDiameter", LENGTH, "diameter of a roll", ABOVE_0)
        .in("diameter", LENGTH, "diameter of the blank", ABOVE_0)
        .in("depth", LENGTH, "depth rolled in from one side", ABOVE_0)
        .in("feed", FEED, "feed f of the head", ABOVE_0)
        .with(SpeedInputs::either)
        .source("geometry of roll and blank, derived" + CAUTION)
        .example("rollDiameter=40mm diameter=9mm depth=0.5mm feed=0.3mm/rev speed=40m/min")
        .by(
            v -> {
              double revPerMin = SpeedInputs.revPerMin(v, v.num("diameter"));
              double travelMm =
                  ThreadRolling.tangentialTravelMm(
                      v.num("rollDiameter"), v.num("diameter"), v.num("depth"));
              return Answer.of(
                      "time t",
                      SECONDS,
                      ThreadRolling.tangentialS(travelMm, v.num("feed"), revPerMin))
                  .step("spindle speed n", ROTATION, revPerMin)
                  .step("travel", LENGTH, travelMm);
            },
            ThreadRolling.class);
  }

  private static Formula force() {
    return draft("rolling-force", "force that presses one roll of a radial head, an estimate")
        .law("s = a/(Nw·z); c = √(2·s·R·r/(R + r)); F = k·Rm·l·c")
        .in("rollDiameter", LENGTH, "diameter 2R of a roll", ABOVE_0)
        .in("diameter", LENGTH, "diameter 2r of the blank", ABOVE_0)
        .in("depth", LENGTH, "depth a rolled in from one side", ABOVE_0)
        .in("length", LENGTH, "length l of thread under the rolls", ABOVE_0)
        .in("strength", STRESS, "tensile strength Rm", ABOVE_0)
        .in("revolutions", AMOUNT, "revolutions Nw of the work", ABOVE_0, "20")
        .usual(between(10, 30), "not usual for rolling")
        .in("rolls", COUNT, "rolls z around the work", between(1, 4), "2")
        .in("constraint", FACTOR, "pressure to strength k", between(1, 6), "3")
        .source(
            "contact of two cylinders, derived; k from memory; good to a half either way" + CAUTION)
        .example("rollDiameter=40mm diameter=9mm depth=0.5mm length=15mm strength=500MPa")
        .by(
            v -> {
              RollingForce rolling =
                  new RollingForce(
                      v.num("rollDiameter"),
                      v.num("diameter"),
                      v.num("depth"),
                      v.num("revolutions"),
                      v.count("rolls"),
                      v.num("length"));
              return Answer.of(
                      "force on one roll",
                      FORCE,
                      rolling.forceN(v.num("strength"), v.num("constraint")))
                  .step("depth of one pass s", LENGTH, rolling.perPassMm())
                  .step("contact length c", LENGTH, rolling.contactMm());
            },
            RollingForce.class);
  }

  private static Formula material() {
    return draft("rolling-material", "whether a material flows well enough to be rolled")
        .law("elongation at least 7 %, strength at most 1400 N/mm²")
        .in("elongation", SHARE, "elongation at break", between(0, 100))
        .in("strength", STRESS, "tensile strength Rm", ABOVE_0)
        .source("from memory, common practice; cast iron cannot be rolled [MH31] p. 2187")
        .example("elongation=9% strength=560MPa")
        .by(
            v -> {
              Validity found = ThreadRolling.material(v.num("elongation"), v.num("strength"));
              return Answer.NONE
                  .result("it can be rolled", found.isInside() ? "yes" : "doubtful")
                  .noting(found);
            },
            ThreadRolling.class);
  }
}
