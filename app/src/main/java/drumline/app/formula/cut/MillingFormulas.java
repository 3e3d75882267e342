package drumline.app.formula.cut;

import static drumline.app.formula.Allowed.ABOVE_0;
import static drumline.app.formula.Allowed.FROM_0;
import static drumline.app.formula.Allowed.aboveTo;
import static drumline.app.formula.Allowed.atLeast;
import static drumline.app.formula.Allowed.between;
import static drumline.app.formula.Measure.AMOUNT;
import static drumline.app.formula.Measure.ANGLE;
import static drumline.app.formula.Measure.COUNT;
import static drumline.app.formula.Measure.LENGTH;
import static drumline.app.formula.Measure.MICRON;
import static drumline.app.formula.Measure.ROTATION;
import static drumline.app.formula.Measure.SECONDS;
import static drumline.app.formula.Measure.SLIDE_FEED;
import static drumline.app.formula.Measure.TOOTH_FEED;
import static drumline.app.formula.Topic.LIVE_TOOLS;

import drumline.app.formula.Answer;
import drumline.app.formula.Formula;
import drumline.app.formula.FormulaDraft;
import drumline.app.formula.Values;
import drumline.cutting.force.ChipCompression;
import drumline.cutting.force.KienzleConstants;
import drumline.cutting.milling.CutterRunIn;
import drumline.cutting.milling.MillingChip;
import drumline.cutting.milling.MillingCusp;
import drumline.cutting.milling.MillingCut;
import drumline.cutting.milling.MillingPass;
import java.util.List;

/** Milling with live tools. */
final class MillingFormulas {
  private MillingFormulas() {}

  static List<Formula> all() {
    return List.of(chip(), force(), time(), runIn(), cusp());
  }

  private static FormulaDraft draft(String name, String title) {
    return Formula.named(LIVE_TOOLS, name, title);
  }

  private static FormulaDraft cutter(FormulaDraft draft) {
    return draft
        .in("cutterDiameter", LENGTH, "cutter diameter D", ABOVE_0)
        .in("engagement", LENGTH, "width of cut ae, square to the cutter's axis", ABOVE_0)
        .in("toothFeed", TOOTH_FEED, "feed fz for each tooth", ABOVE_0)
        .in("edgeAngle", ANGLE, "edge angle κ, 90° for end mills", aboveTo(0, 90), "90 deg")
        .choice("place", "where the cut lies in the cutter's path", MillingChip.Place.ONE_SIDE);
  }

  private static MillingChip chip(Values v) {
    return new MillingChip(
        v.num("cutterDiameter"),
        v.num("engagement"),
        v.num("toothFeed"),
        v.num("edgeAngle"),
        v.choice("place", MillingChip.Place.class));
  }

  private static Formula chip() {
    return draft("milling-chip", "mean chip thickness of a milling cutter")
        .law("cos φs = 1 − 2·ae/D; hm = 360/(π·φs°)·(ae/D)·fz·sin κ")
        .with(MillingFormulas::cutter)
        .source("[TSCH] Dietrich and Tschätsch, 11th edition, mean chip thickness in milling")
        .example("cutterDiameter=10mm engagement=10mm toothFeed=0.1mm/tooth")
        .by(
            v ->
                Answer.of("mean chip thickness hm", LENGTH, chip(v).meanThicknessMm())
                    .step("contact angle φs", ANGLE, chip(v).contactAngleDeg())
                    .noting(KienzleConstants.validity(chip(v).meanThicknessMm())),
            MillingChip.class);
  }

  private static Formula force() {
    return draft("milling-force", "force, torque and power of a milling cutter")
        .law(
            "b = ap/(sin κ·cos λ); zE = z·φs/360; Fcm = kc(hm)·b·hm on one tooth; M = Fcm·zE·D/2000")
        .with(MillingFormulas::cutter)
        .in("teeth", COUNT, "teeth z", atLeast(1))
        .in("depth", LENGTH, "depth ap along the cutter's axis", ABOVE_0)
        .in("helix", ANGLE, "helix angle λ", between(0, 89), "30 deg")
        .with(SpeedInputs::either)
        .with(CutInputs.of(ChipCompression.MILLING))
        .source(
            "[TSCH] Dietrich and Tschätsch, 11th edition, milling; mean torque; uncertainty 20 %")
        .example(
            "cutterDiameter=10mm engagement=3mm toothFeed=0.05mm/tooth teeth=4 depth=8mm speed=120m/min"
                + " material=11SMn30")
        .by(
            v -> {
              MillingCut cut =
                  new MillingCut(chip(v), v.count("teeth"), v.num("depth"), v.num("helix"));
              double revPerMin = SpeedInputs.revPerMin(v, v.num("cutterDiameter"));
              return CutInputs.load(
                      v, cut.load(CutInputs.constants(v), CutInputs.corrections(v), revPerMin))
                  .step("teeth in contact zE", AMOUNT, cut.teethInContactCount())
                  .step("tool speed n", ROTATION, revPerMin);
            },
            MillingCut.class);
  }

  private static Formula time() {
    return draft("milling-time", "one straight pass of a milling cutter")
        .law("vf = fz·z·n; t = (la + l + lo)/vf")
        .in("length", LENGTH, "length l of the milled face", ABOVE_0)
        .in("cutterDiameter", LENGTH, "cutter diameter", ABOVE_0)
        .in("toothFeed", TOOTH_FEED, "feed fz for each tooth", ABOVE_0)
        .in("teeth", COUNT, "teeth z", atLeast(1))
        .with(SpeedInputs::either)
        .in("runIn", LENGTH, "run-in la, see milling-run-in", FROM_0, "1 mm")
        .in("overrun", LENGTH, "overrun lo", FROM_0, "0 mm")
        .source("[SHARMA] problem 4.17")
        .example(
            "length=200mm cutterDiameter=150mm toothFeed=0.25mm/tooth teeth=10 speed=50m/min"
                + " runIn=55.902mm")
        .by(
            v -> {
              double revPerMin = SpeedInputs.revPerMin(v, v.num("cutterDiameter"));
              MillingPass pass =
                  new MillingPass(
                      v.num("length"),
                      v.num("runIn"),
                      v.num("overrun"),
                      v.num("toothFeed"),
                      v.count("teeth"));
              return Answer.of("time t", SECONDS, pass.timeS(revPerMin))
                  .step("tool speed n", ROTATION, revPerMin)
                  .step("feed vf", SLIDE_FEED, pass.feedMmPerMin(revPerMin));
            },
            MillingPass.class);
  }

  private static Formula runIn() {
    return draft("milling-run-in", "way until a cutter cuts its whole engagement")
        .law("circumference √(ae·(D − ae)); face, centred (D − √(D² − B²))/2")
        .in("cutterDiameter", LENGTH, "cutter diameter D", ABOVE_0)
        .in("engagement", LENGTH, "width of cut ae, or B", ABOVE_0)
        .source("geometry; the first in [SHARMA] problem 4.17")
        .example("cutterDiameter=150mm engagement=25mm")
        .by(
            v ->
                Answer.of(
                        "cut with the circumference",
                        LENGTH,
                        CutterRunIn.circumferenceMm(v.num("cutterDiameter"), v.num("engagement")))
                    .result(
                        "cut with the face, centred",
                        LENGTH,
                        CutterRunIn.faceMm(v.num("cutterDiameter"), v.num("engagement"))),
            CutterRunIn.class);
  }

  private static Formula cusp() {
    return draft("milling-cusp", "height of the marks that a cutter's circumference leaves")
        .law("H = fz²/(4·D)")
        .in("cutterDiameter", LENGTH, "cutter diameter D", ABOVE_0)
        .in("toothFeed", TOOTH_FEED, "feed fz for each tooth", ABOVE_0)
        .source("[GM] problem 4.25; the cutter's run-out, usually larger, is left out")
        .example("cutterDiameter=100mm toothFeed=0.034722mm/tooth")
        .by(
            v ->
                Answer.of(
                    "height H",
                    MICRON,
                    MillingCusp.heightUm(v.num("cutterDiameter"), v.num("toothFeed"))),
            MillingCusp.class);
  }
}
