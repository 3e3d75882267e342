package drumline.app.formula.cut;

import static drumline.app.formula.Allowed.ABOVE_0;
import static drumline.app.formula.Allowed.FROM_0;
import static drumline.app.formula.Allowed.atLeast;
import static drumline.app.formula.Allowed.between;
import static drumline.app.formula.Allowed.inside;
import static drumline.app.formula.Measure.AMOUNT;
import static drumline.app.formula.Measure.ANGLE;
import static drumline.app.formula.Measure.FACTOR;
import static drumline.app.formula.Measure.LENGTH;
import static drumline.app.formula.Measure.POWER;
import static drumline.app.formula.Measure.ROTATION;
import static drumline.app.formula.Measure.ROTATION_GAIN;
import static drumline.app.formula.Measure.SECONDS;
import static drumline.app.formula.Measure.SLIDE_FEED;
import static drumline.app.formula.Measure.STRESS;
import static drumline.app.formula.Measure.TORQUE;
import static drumline.app.formula.Topic.THREADING;

import drumline.app.formula.Answer;
import drumline.app.formula.Formula;
import drumline.app.formula.FormulaDraft;
import drumline.app.formula.Values;
import drumline.cutting.tables.TappingForceTable;
import drumline.cutting.threading.TapPass;
import drumline.cutting.threading.TappingTorque;
import drumline.cutting.threading.ThreadMilling;
import java.util.List;

/** Threads tapped, formed or milled. */
final class TapFormulas {
  private TapFormulas() {}

  static List<Formula> all() {
    return List.of(tapping(), differential(), torque(), torqueByDepth(), milling());
  }

  private static FormulaDraft draft(String name, String title) {
    return Formula.named(THREADING, name, title);
  }

  private static FormulaDraft tap(FormulaDraft draft) {
    return draft
        .in("depth", LENGTH, "length l of full thread", ABOVE_0)
        .in("pitch", LENGTH, "pitch P", ABOVE_0)
        .choice("chamfer", "form of the tap's chamfer", TapPass.Chamfer.FORM_C);
  }

  private static TapPass tap(Values v) {
    return new TapPass(v.num("depth"), v.num("pitch"), v.choice("chamfer", TapPass.Chamfer.class));
  }

  private static Formula tapping() {
    return draft("tapping-time", "tapping in and out by reversing the spindle")
        .law("t = (l + e)/(P·n) + (l + e)/(P·nr) + (n + nr)/α, e = (chamfer + 1)·P")
        .with(TapFormulas::tap)
        .in("speedIn", ROTATION, "spindle speed n going in", ABOVE_0)
        .in("speedOut", ROTATION, "spindle speed nr coming out", ABOVE_0)
        .in(
            "acceleration",
            ROTATION_GAIN,
            "acceleration α of the spindle",
            ABOVE_0,
            "2000 rev/min/s")
        .source("derived; chamfer lengths of taps and the default acceleration from memory")
        .example("depth=12mm pitch=1.25mm speedIn=800rev/min speedOut=1200rev/min")
        .by(
            v ->
                Answer.of(
                        "time t",
                        SECONDS,
                        tap(v)
                            .reversingS(v.num("speedIn"), v.num("speedOut"), v.num("acceleration")))
                    .step("travel l + e", LENGTH, tap(v).travelMm())
                    .step("revolutions one way", AMOUNT, tap(v).revolutionsCount()),
            TapPass.class);
  }

  private static Formula differential() {
    return draft("differential-tapping-time", "tapping with a tap that turns in ratio to the work")
        .law("t = (l + e)/(P·|nw − ni|) + (l + e)/(P·|no − nw|) + tc")
        .with(TapFormulas::tap)
        .in("workSpeed", ROTATION, "speed nw of the work", ABOVE_0)
        .in("tapIn", ROTATION, "tap's speed ni going in", FROM_0)
        .in("tapOut", ROTATION, "tap's speed no coming out", FROM_0)
        .in("change", SECONDS, "time tc to change speed", FROM_0, "0.3 s")
        .source("kinematics of tap and work turning the same way; change time from memory")
        .example(
            "depth=12mm pitch=1.25mm workSpeed=1500rev/min tapIn=1000rev/min tapOut=2500rev/min")
        .by(
            v ->
                Answer.of(
                        "time t",
                        SECONDS,
                        tap(v)
                            .differentialS(
                                v.num("workSpeed"),
                                v.num("tapIn"),
                                v.num("tapOut"),
                                v.num("change")))
                    .step("travel l + e", LENGTH, tap(v).travelMm()),
            TapPass.class);
  }

  private static Formula torque() {
    List<String> groups =
        TappingForceTable.rows().stream().map(row -> row.group().replace(' ', '-')).toList();
    return draft("tapping-torque", "torque of tapping or forming a thread")
        .law("M = kc·P²·D/8000; formed: 2 to 3 times as much")
        .in("diameter", LENGTH, "nominal diameter D", ABOVE_0)
        .in("pitch", LENGTH, "pitch P", ABOVE_0)
        .choice("group", "group of materials whose kc is taken", groups, groups.get(0))
        .optional("specificForce", STRESS, "kc of tapping, in place of the group's", ABOVE_0)
        .optional(
            "forming",
            FACTOR,
            "factor on the torque for a forming tap; left out: cutting",
            between(2, 3))
        .with(SpeedInputs::either)
        .source("[LUBERO] with its own kc, not kc1.1; [YAM2] p. 1158 for forming")
        .example("diameter=8mm pitch=1.25mm spindleSpeed=600rev/min")
        .by(
            v -> {
              double force = v.num("specificForce", ofGroup(v.text("group")));
              double cutNm = TappingTorque.cutNm(force, v.num("pitch"), v.num("diameter"));
              double torqueNm =
                  v.has("forming") ? TappingTorque.formedNm(cutNm, v.num("forming")) : cutNm;
              double revPerMin = SpeedInputs.revPerMin(v, v.num("diameter"));
              return Answer.of("torque M", TORQUE, torqueNm)
                  .step("kc of tapping", STRESS, force)
                  .step("spindle speed n", ROTATION, revPerMin)
                  .result(
                      "power",
                      POWER,
                      TappingTorque.load(torqueNm, force, v.num("diameter"), revPerMin).powerKw());
            },
            TappingTorque.class,
            TappingForceTable.class);
  }

  private static double ofGroup(String group) {
    return TappingForceTable.rows().stream()
        .filter(row -> row.group().replace(' ', '-').equals(group))
        .findFirst()
        .orElseThrow()
        .specificForceMpa();
  }

  private static Formula torqueByDepth() {
    return draft("tapping-torque-by-hole", "torque of tapping from the depth of thread")
        .law("M = tan θ·kc·K·(D − D0)²·(D + 2·D0)/24000")
        .in("diameter", LENGTH, "nominal diameter D", ABOVE_0)
        .in("holeDiameter", LENGTH, "diameter D0 of the hole", ABOVE_0)
        .in("specificForce", STRESS, "kc of tapping", ABOVE_0)
        .in("tapFactor", FACTOR, "factor K of the kind of tap", between(0.5, 2), "1.35")
        .in("halfAngle", ANGLE, "half the angle θ of the thread", inside(0, 60), "30 deg")
        .source("[YAM] p. 639, K 0.75 to 1.5 there")
        .example("diameter=8mm holeDiameter=6.8mm specificForce=3900MPa")
        .by(
            v ->
                Answer.of(
                    "torque M",
                    TORQUE,
                    TappingTorque.byDepthNm(
                        v.num("specificForce"),
                        v.num("tapFactor"),
                        v.num("diameter"),
                        v.num("holeDiameter"),
                        v.num("halfAngle"))),
            TappingTorque.class);
  }

  private static Formula milling() {
    return draft("thread-milling-time", "thread milled by a cutter in helical turns")
        .law("t = π·D·(turns + entry)/vf + th; centre inside vf·(D − d)/D, outside vf·(D + d)/D")
        .in("diameter", LENGTH, "diameter D of the thread", ABOVE_0)
        .in("cutterDiameter", LENGTH, "cutter diameter d", ABOVE_0)
        .in("feed", SLIDE_FEED, "feed vf along the contour", ABOVE_0)
        .in("turns", AMOUNT, "turns in cut", atLeast(1), "1")
        .in("entryTurns", FACTOR, "turns for entry and exit together", FROM_0, "0.5")
        .in("hold", SECONDS, "time th to orient, clamp and unclamp", FROM_0, "0.4 s")
        .source(
            "kinematics; entry arcs of a quarter turn and the hold are common practice, from memory")
        .example("diameter=20mm cutterDiameter=12mm feed=400mm/min")
        .by(
            v -> {
              ThreadMilling milling =
                  new ThreadMilling(
                      v.num("diameter"),
                      v.num("cutterDiameter"),
                      v.num("turns"),
                      v.num("entryTurns"),
                      v.num("hold"));
              double feed = v.num("feed");
              Answer answer =
                  Answer.of("time t", SECONDS, milling.timeS(feed))
                      .result(
                          "feed of the centre, outside",
                          SLIDE_FEED,
                          milling.outsideCentreMmPerMin(feed))
                      .result("speed of the work's axis", ROTATION, milling.axisRevPerMin(feed));
              return v.num("cutterDiameter") < v.num("diameter")
                  ? answer.result(
                      "feed of the centre, inside", SLIDE_FEED, milling.insideCentreMmPerMin(feed))
                  : answer;
            },
            ThreadMilling.class);
  }
}
