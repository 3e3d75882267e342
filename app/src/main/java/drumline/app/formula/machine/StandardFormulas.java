package drumline.app.formula.machine;

import static drumline.app.formula.Allowed.ABOVE_0;
import static drumline.app.formula.Allowed.ANY;
import static drumline.app.formula.Measure.LENGTH;
import static drumline.app.formula.Measure.MICRON;
import static drumline.app.formula.Measure.SECTION;
import static drumline.app.formula.Measure.TEXT;
import static drumline.app.formula.Topic.STANDARDS;

import drumline.app.formula.Answer;
import drumline.app.formula.Formula;
import drumline.app.formula.FormulaDraft;
import drumline.app.formula.RefusedValue;
import drumline.app.formula.Values;
import drumline.shop.quantity.UnitSystem;
import drumline.shop.standard.BarFinish;
import drumline.shop.standard.BarSection;
import drumline.shop.standard.BarTolerance;
import drumline.shop.standard.CentreHole;
import drumline.shop.standard.Keyway;
import drumline.shop.standard.ThreadRelief;
import drumline.shop.thread.ThreadCatalogue;
import drumline.shop.thread.ThreadSize;
import drumline.shop.tolerance.Tolerance;
import drumline.shop.tolerance.ToleranceParsed;
import drumline.shop.tolerance.ToleranceReader;
import java.util.List;

/** Figures of standards. */
final class StandardFormulas {
  private StandardFormulas() {}

  static List<Formula> all() {
    return List.of(tolerance(), thread(), bar(), keyway(), centre(), relief());
  }

  private static FormulaDraft draft(String name, String title) {
    return Formula.named(STANDARDS, name, title);
  }

  private static Formula tolerance() {
    return draft("tolerance-limits", "limits of a size with a tolerance class")
        .law("limit = size + deviation; deviations from the tables of ISO 286")
        .in("size", LENGTH, "nominal size", ABOVE_0)
        .in("tolerance", TEXT, "class such as H7, or general tolerance such as ISO 2768-m", ANY)
        .source(
            "[ISO-286-1] and [ISO-286-2] 2010, [ISO-2768-1] 1989; checked against open transcriptions")
        .example("size=25mm tolerance=H7")
        .by(
            v -> {
              ToleranceParsed parsed =
                  ToleranceReader.read(v.text("tolerance"), v.num("size"), UnitSystem.METRIC);
              if (parsed instanceof ToleranceParsed.Refused refused) {
                throw new RefusedValue("tolerance", refused.toProblem("tolerance"));
              }
              Tolerance tolerance = ((ToleranceParsed.Value) parsed).tolerance();
              return Answer.of("largest", LENGTH, tolerance.upperLimitMm(v.num("size")))
                  .step("upper deviation", MICRON, 1000 * tolerance.upperDeviationMm())
                  .step("lower deviation", MICRON, 1000 * tolerance.lowerDeviationMm())
                  .result("smallest", LENGTH, tolerance.lowerLimitMm(v.num("size")))
                  .result("middle", LENGTH, tolerance.middleMm(v.num("size")));
            },
            ToleranceReader.class);
  }

  private static Formula thread() {
    return draft("thread-limits", "limits of a thread, and the drill or blank before it")
        .law("limits = basic size, less or plus deviation and tolerance of the class")
        .in("thread", TEXT, "designation such as M10x1.5-6g, 1/4-20 UNC-2A, G 1/2", ANY)
        .source(
            "[ISO-965-1], [ASME-B1.1], [ISO-228-1], [ASME-B1.20.1], [ISO-7-1]; tables mostly from memory,"
                + " checked against open transcriptions")
        .example("thread=M8")
        .by(StandardFormulas::thread, ThreadCatalogue.class);
  }

  private static Answer thread(Values v) {
    ThreadSize size =
        ThreadCatalogue.find(v.text("thread"))
            .orElseThrow(
                () ->
                    new RefusedValue(
                        "thread", ThreadCatalogue.explain(v.text("thread"), "thread")));
    Answer answer =
        Answer.NONE
            .step("class", size.toleranceClass().isEmpty() ? "none" : size.toleranceClass())
            .step("major diameter", LENGTH, size.majorMm())
            .step("pitch", LENGTH, size.pitchMm())
            .step("pitch diameter", LENGTH, size.pitchDiameterMm());
    if (size.external().isPresent()) {
      ThreadSize.ExternalLimits limits = size.external().get();
      answer =
          answer
              .result("outside: major largest", LENGTH, limits.majorMaxMm())
              .result("outside: major smallest", LENGTH, limits.majorMinMm())
              .result("outside: pitch diameter largest", LENGTH, limits.pitchMaxMm())
              .result("outside: pitch diameter smallest", LENGTH, limits.pitchMinMm());
    }
    if (size.internal().isPresent()) {
      ThreadSize.InternalLimits limits = size.internal().get();
      answer =
          answer
              .result("inside: minor largest", LENGTH, limits.minorMaxMm())
              .result("inside: minor smallest", LENGTH, limits.minorMinMm())
              .result("inside: pitch diameter largest", LENGTH, limits.pitchMaxMm())
              .result("inside: pitch diameter smallest", LENGTH, limits.pitchMinMm());
    }
    return start(answer, size.start());
  }

  private static Answer start(Answer answer, ThreadSize.ThreadStart start) {
    Answer all = answer;
    if (start.tapDrillMm().isPresent()) {
      all = all.result("drill before tapping", LENGTH, start.tapDrillMm().getAsDouble());
    }
    if (start.formTapDrillMm().isPresent()) {
      all = all.result("drill before forming", LENGTH, start.formTapDrillMm().getAsDouble());
    }
    if (start.rollBlankMm().isPresent()) {
      all = all.result("blank before rolling", LENGTH, start.rollBlankMm().getAsDouble());
    }
    return all;
  }

  private static Formula bar() {
    return draft("bar-tolerance", "tolerance of bright bar, size across corners")
        .law("class h by section and finish; corners s·2/√3 hexagon, s·√2 square")
        .choice("section", "section of the bar", BarSection.ROUND)
        .choice("finish", "finish of the bar", BarFinish.DRAWN)
        .in("size", LENGTH, "diameter or size across flats", ABOVE_0)
        .source("[EN-10278] 1999, table 1; checked against three suppliers' pages")
        .example("section=hexagon size=17mm")
        .by(
            v -> {
              BarSection section = v.choice("section", BarSection.class);
              BarFinish finish = v.choice("finish", BarFinish.class);
              int grade =
                  BarTolerance.findUsualGrade(section, finish, v.num("size"))
                      .orElseThrow(
                          () ->
                              new IllegalArgumentException(
                                  "size is without a usual class for this section and finish;"
                                      + " allowed is a size of the table, not polished."));
              Tolerance tolerance =
                  BarTolerance.find(section, finish, v.num("size"), grade).orElseThrow();
              return Answer.NONE
                  .result("class without agreement", "h" + grade)
                  .result("below the size by at most", MICRON, -1000 * tolerance.lowerDeviationMm())
                  .result("size across corners", LENGTH, section.acrossCornersMm(v.num("size")))
                  .result("cross-section", SECTION, section.areaMm2(v.num("size")));
            },
            BarTolerance.class);
  }

  private static Formula keyway() {
    return draft("keyway", "parallel key and keyway for a shaft")
        .law("table by shaft diameter")
        .in("diameter", LENGTH, "shaft diameter", ABOVE_0)
        .source("[DIN-6885-1] 1968, [ISO-773] 1969; checked against two catalogue pages")
        .example("diameter=24mm")
        .by(
            v -> {
              Keyway key =
                  Keyway.findForShaft(v.num("diameter"))
                      .orElseThrow(
                          () ->
                              new IllegalArgumentException(
                                  "diameter is outside the table; allowed is a shaft of the table,"
                                      + " above 6 mm."));
              return Answer.of("width", LENGTH, key.widthMm())
                  .result("height of the key", LENGTH, key.keyHeightMm())
                  .result("depth in the shaft", LENGTH, key.shaftDepthMm())
                  .result("depth in the hub", LENGTH, key.hubDepthMm())
                  .result("both depths up to deeper by", LENGTH, key.depthUpperMm());
            },
            Keyway.class);
  }

  private static Formula centre() {
    return draft("centre-hole", "centre hole by form and pilot diameter")
        .law("depth of the 60° cone (cone − pilot)/(2·tan 30°)")
        .choice("form", "form: curved, plain, with guard cone", CentreHole.Form.A)
        .in("pilot", LENGTH, "pilot diameter", ABOVE_0)
        .source("[ISO-6411] 1982, table 1; from memory, unverified")
        .example("form=a pilot=4mm")
        .by(
            v -> {
              CentreHole hole =
                  CentreHole.find(v.choice("form", CentreHole.Form.class), tabled(v, "pilot"))
                      .orElseThrow(
                          () ->
                              new IllegalArgumentException(
                                  "pilot is not in the table; allowed is 1, 1.25, 1.6, 2, 2.5, 3.15, 4 … mm."));
              return Answer.of("diameter at the face", LENGTH, hole.mouthMm())
                  .result("mouth of the 60° cone", LENGTH, hole.coneMm())
                  .result("depth of the 60° cone", LENGTH, hole.coneDepthMm());
            },
            CentreHole.class);
  }

  private static Formula relief() {
    return draft("thread-relief", "relief groove of a metric thread")
        .law("table by pitch")
        .in("diameter", LENGTH, "major diameter of the thread", ABOVE_0)
        .in("pitch", LENGTH, "pitch", ABOVE_0)
        .choice("side", "outside or inside thread", List.of("outside", "inside"), "outside")
        .choice("room", "the usual groove or the short one", ThreadRelief.Room.REGULAR)
        .source("[DIN-76-1] 2004, tables 1 to 3; from memory, unverified")
        .example("diameter=10mm pitch=1.5mm")
        .by(
            v -> {
              ThreadRelief.Room room = v.choice("room", ThreadRelief.Room.class);
              ThreadRelief relief =
                  (v.text("side").equals("outside")
                          ? ThreadRelief.findExternal(v.num("diameter"), tabled(v, "pitch"), room)
                          : ThreadRelief.findInternal(v.num("diameter"), tabled(v, "pitch"), room))
                      .orElseThrow(
                          () ->
                              new IllegalArgumentException(
                                  "pitch is not in the table; allowed is a metric pitch from 0.2 mm."));
              return Answer.of("groove diameter", LENGTH, relief.diameterMm())
                  .result("form", String.valueOf(relief.form()))
                  .result("cylindrical part at least", LENGTH, relief.widthMinMm())
                  .result("whole groove at most", LENGTH, relief.widthMaxMm())
                  .result("corner radius", LENGTH, relief.radiusMm());
            },
            ThreadRelief.class);
  }

  /**
   * A size of a table in millimetres without the dust of conversion, whatever unit it was written
   * in.
   */
  private static double tabled(Values v, String key) {
    return Math.rint(v.num(key) * 1e5) / 1e5;
  }
}
