package drumline.app.formula.machine;

import static drumline.app.formula.Allowed.ABOVE_0;
import static drumline.app.formula.Allowed.FROM_0;
import static drumline.app.formula.Allowed.between;
import static drumline.app.formula.Measure.AREA_MOMENT;
import static drumline.app.formula.Measure.BALANCE;
import static drumline.app.formula.Measure.DENSITY;
import static drumline.app.formula.Measure.FACTOR;
import static drumline.app.formula.Measure.FORCE;
import static drumline.app.formula.Measure.LENGTH;
import static drumline.app.formula.Measure.MASS;
import static drumline.app.formula.Measure.MICRON;
import static drumline.app.formula.Measure.ROTATION;
import static drumline.app.formula.Measure.SECTION;
import static drumline.app.formula.Measure.STRESS;
import static drumline.app.formula.Topic.STIFFNESS;

import drumline.app.formula.Answer;
import drumline.app.formula.Formula;
import drumline.app.formula.FormulaDraft;
import drumline.app.formula.Values;
import drumline.cutting.clamping.CentrifugalForce;
import drumline.cutting.stiffness.BalanceGrade;
import drumline.cutting.stiffness.BarSection;
import drumline.cutting.stiffness.BarWhirl;
import drumline.cutting.stiffness.BendingDeflection;
import drumline.cutting.stiffness.BoringBar;
import drumline.cutting.stiffness.WorkOverhang;
import java.util.List;

/** Bending, whirling and balance. */
final class StiffnessFormulas {
  private static final List<String> SHAPES = List.of("round", "tube", "hexagon", "square");

  private StiffnessFormulas() {}

  static List<Formula> all() {
    return List.of(
        section(),
        overhang(),
        propped(),
        workOverhang(),
        boringBar(),
        whirl(),
        balance(),
        unbalance());
  }

  private static FormulaDraft draft(String name, String title) {
    return Formula.named(STIFFNESS, name, title);
  }

  private static FormulaDraft shape(FormulaDraft draft) {
    return draft
        .choice("shape", "cross section", SHAPES, "round")
        .in("size", LENGTH, "diameter, or size across flats", ABOVE_0)
        .in("bore", LENGTH, "bore of a tube", FROM_0, "0 mm");
  }

  private static BarSection shape(Values v) {
    double size = v.num("size");
    return switch (v.text("shape")) {
      case "tube" -> new BarSection.Tube(size, v.num("bore"));
      case "hexagon" -> new BarSection.Hexagon(size);
      case "square" -> new BarSection.Square(size);
      default -> new BarSection.Round(size);
    };
  }

  private static FormulaDraft elastic(FormulaDraft draft) {
    return draft
        .in("elasticity", STRESS, "Young's modulus E", ABOVE_0, "206000 MPa")
        .usual(between(40_000, 650_000), "no metal of the trade");
  }

  private static Formula section() {
    return draft("bar-section", "area, second moment and corners of bar or tube")
        .law("I = π·d⁴/64; hexagon 0.06014·s⁴; square s⁴/12; corners s·2/√3, s·√2")
        .with(StiffnessFormulas::shape)
        .source("strength of materials; sharp corners, drawn bars have a little less")
        .example("shape=hexagon size=17mm")
        .by(
            v ->
                Answer.of("area", SECTION, shape(v).areaMm2())
                    .result("second moment of area I", AREA_MOMENT, shape(v).inertiaMm4())
                    .result("size across corners", LENGTH, shape(v).acrossCornersMm()),
            BarSection.class,
            BarSection.Round.class,
            BarSection.Tube.class,
            BarSection.Hexagon.class,
            BarSection.Square.class);
  }

  private static Formula overhang() {
    return draft(
            "overhang-deflection", "bending of work or tool that stands out, under a side force")
        .law("y = F·l³/(3·E·I)")
        .in("force", FORCE, "side force F", FROM_0)
        .in("length", LENGTH, "length l from the grip", ABOVE_0)
        .with(StiffnessFormulas::shape)
        .with(StiffnessFormulas::elastic)
        .source("beam theory; spindle, collet and holder give more, so reality bends more")
        .example("force=300N length=40mm size=16mm")
        .by(
            v ->
                Answer.of(
                        "deflection y",
                        MICRON,
                        1000
                            * BendingDeflection.overhangMm(
                                v.num("force"), v.num("length"), v.num("elasticity"), shape(v)))
                    .step("second moment I", AREA_MOMENT, shape(v).inertiaMm4()),
            BendingDeflection.class);
  }

  private static Formula propped() {
    return draft("propped-deflection", "bending half-way between grip and a support at the end")
        .law("y = 7·F·l³/(768·E·I)")
        .in("force", FORCE, "side force F at mid-span", FROM_0)
        .in("length", LENGTH, "length l between grip and support", ABOVE_0)
        .with(StiffnessFormulas::shape)
        .with(StiffnessFormulas::elastic)
        .source("beam theory, clamped and propped; checked by integrating the bending moment")
        .example("force=300N length=80mm size=16mm")
        .by(
            v ->
                Answer.of(
                    "deflection y",
                    MICRON,
                    1000
                        * BendingDeflection.proppedMm(
                            v.num("force"), v.num("length"), v.num("elasticity"), shape(v))),
            BendingDeflection.class);
  }

  private static Formula workOverhang() {
    return draft(
            "work-overhang", "whether work stands out of the collet too far, by the rule of thumb")
        .law("l/d to 3 rough, 4 finish, 6 held at the end")
        .in("length", LENGTH, "overhang l from the collet", ABOVE_0)
        .in("diameter", LENGTH, "smallest diameter d on the way", ABOVE_0)
        .choice("cut", "kind of cut", WorkOverhang.ROUGH)
        .source("from memory, common practice; overhang-deflection gives the figure")
        .example("length=40mm diameter=16mm")
        .by(
            v -> {
              WorkOverhang kind = v.choice("cut", WorkOverhang.class);
              return Answer.of("l/d", FACTOR, v.num("length") / v.num("diameter"))
                  .result("usual to", FACTOR, kind.longestRatio())
                  .noting(kind.validity(v.num("length"), v.num("diameter")));
            },
            WorkOverhang.class);
  }

  private static Formula boringBar() {
    return draft("boring-bar", "bending of a boring bar, and whether its overhang is usual")
        .law("y = F·l³/(3·E·I); l/D to 4 steel, 6 carbide and heavy metal, 7 and 10 damped")
        .in("diameter", LENGTH, "shank diameter D", ABOVE_0)
        .in("overhang", LENGTH, "overhang l", ABOVE_0)
        .in("force", FORCE, "force across the bar", FROM_0)
        .choice("kind", "what the bar is made of", BoringBar.Kind.STEEL)
        .source("beam theory; limits and moduli from memory; clamped over 3 to 4 D [ISAK]")
        .example("diameter=16mm overhang=60mm force=250N")
        .by(
            v -> {
              BoringBar bar =
                  new BoringBar(
                      v.num("diameter"), v.num("overhang"), v.choice("kind", BoringBar.Kind.class));
              return Answer.of("deflection y", MICRON, bar.deflectionUm(v.num("force")))
                  .step("l/D", FACTOR, bar.slendernessRatio())
                  .step("Young's modulus E", STRESS, bar.kind().elasticityMpa())
                  .step("usual to l/D", FACTOR, bar.kind().longestRatio())
                  .noting(bar.validity());
            },
            BoringBar.class);
  }

  private static Formula whirl() {
    return draft("bar-whirl", "first critical speed of a bar between two loose supports")
        .law("n = (30/π)·(π/L)²·√(E·I/(ρ·A))")
        .with(StiffnessFormulas::shape)
        .in("span", LENGTH, "distance L between supports", ABOVE_0)
        .in("spindleSpeed", ROTATION, "spindle speed wanted", ABOVE_0)
        .with(StiffnessFormulas::elastic)
        .in("density", DENSITY, "density ρ", ABOVE_0, "7.85 kg/dm3")
        .source(
            "bending vibration on two pins, derived. Bars usually run above it: clearance, damping and"
                + " straightness decide. A whipping bar injures; none may stand out unguided")
        .example("size=20mm span=1000mm spindleSpeed=4000rev/min")
        .by(
            v -> {
              BarWhirl whirl = new BarWhirl(shape(v), v.num("elasticity"), 1000 * v.num("density"));
              return Answer.of(
                      "first critical speed", ROTATION, whirl.criticalRevPerMin(v.num("span")))
                  .result(
                      "longest free span at the wanted speed",
                      LENGTH,
                      whirl.longestSpanMm(v.num("spindleSpeed")));
            },
            BarWhirl.class);
  }

  private static Formula balance() {
    return draft("balance-grade", "balance grade of an eccentric bar or chuck")
        .law("G = e·ω; e = 1000·G/ω")
        .in("eccentricity", MICRON, "eccentricity e", FROM_0)
        .in("spindleSpeed", ROTATION, "spindle speed", ABOVE_0)
        .in("grade", BALANCE, "grade that is allowed", ABOVE_0, "6.3")
        .source("[ISO-21940-11], relation from memory; G 2.5 and 6.3 are usual for spindles")
        .example("eccentricity=15um spindleSpeed=4000rev/min")
        .by(
            v ->
                Answer.of(
                        "grade G",
                        BALANCE,
                        BalanceGrade.gradeMmPerS(v.num("eccentricity"), v.num("spindleSpeed")))
                    .result(
                        "eccentricity allowed",
                        MICRON,
                        BalanceGrade.allowedUm(v.num("grade"), v.num("spindleSpeed"))),
            BalanceGrade.class);
  }

  private static Formula unbalance() {
    return draft("unbalance-force", "force of a bar that turns off its axis")
        .law("F = m·e·ω², m = ρ·A·L")
        .with(StiffnessFormulas::shape)
        .in("length", LENGTH, "length L of the bar", ABOVE_0)
        .in("eccentricity", MICRON, "eccentricity e of its axis", FROM_0)
        .in("spindleSpeed", ROTATION, "spindle speed", FROM_0)
        .in("density", DENSITY, "density ρ", ABOVE_0, "7.85 kg/dm3")
        .source("mechanics. A bent bar shakes the whole drum: straightness first, then speed")
        .example("size=20mm length=1000mm eccentricity=100um spindleSpeed=4000rev/min")
        .by(
            v -> {
              double massKg = shape(v).areaMm2() * v.num("length") * v.num("density") / 1e6;
              return Answer.of(
                      "force F",
                      FORCE,
                      CentrifugalForce.forceN(
                          massKg, v.num("eccentricity") / 1000, v.num("spindleSpeed")))
                  .step("mass m", MASS, massKg);
            },
            CentrifugalForce.class);
  }
}
