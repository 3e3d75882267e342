package drumline.app.formula.cut;

import static drumline.app.formula.Allowed.ABOVE_0;
import static drumline.app.formula.Allowed.FROM_0;
import static drumline.app.formula.Allowed.aboveTo;
import static drumline.app.formula.Allowed.between;
import static drumline.app.formula.Allowed.inside;
import static drumline.app.formula.Measure.ANGLE;
import static drumline.app.formula.Measure.FACTOR;
import static drumline.app.formula.Measure.FEED;
import static drumline.app.formula.Measure.LENGTH;
import static drumline.app.formula.Measure.POWER;
import static drumline.app.formula.Measure.ROTATION;
import static drumline.app.formula.Measure.SECTION;
import static drumline.app.formula.Measure.SHARE;
import static drumline.app.formula.Measure.SPEED;
import static drumline.app.formula.Measure.STRESS;
import static drumline.app.formula.Measure.TORQUE;
import static drumline.app.formula.Topic.FORCE;

import drumline.app.formula.Answer;
import drumline.app.formula.Formula;
import drumline.app.formula.FormulaDraft;
import drumline.app.formula.Measure;
import drumline.cutting.force.ChipCompression;
import drumline.cutting.force.ChipSection;
import drumline.cutting.force.CuttingPower;
import drumline.cutting.force.KienzleConstants;
import drumline.cutting.force.KienzleForce;
import drumline.cutting.force.LeeShafferForce;
import drumline.cutting.force.RakeCorrection;
import drumline.cutting.force.SpecificEnergyPower;
import drumline.cutting.force.SpeedCorrection;
import java.util.List;

/** Force, power and torque of any cut. */
final class ForceFormulas {
  private static final String TSCH = "[TSCH] Dietrich and Tschätsch, 11th edition";

  private ForceFormulas() {}

  static List<Formula> all() {
    return List.of(
        chip(),
        specificForce(),
        force(),
        feedForForce(),
        rake(),
        speed(),
        power(),
        torque(),
        torquePower(),
        energy(),
        ring(),
        shear());
  }

  private static FormulaDraft draft(String name, String title) {
    return Formula.named(FORCE, name, title);
  }

  private static Formula chip() {
    return draft("chip-section", "thickness, width and area of the chip before it is cut")
        .law("h = f·sin κ; b = ap/sin κ; A = ap·f")
        .in("depth", LENGTH, "depth of cut ap", ABOVE_0)
        .in("feed", FEED, "feed f", ABOVE_0)
        .in("edgeAngle", ANGLE, "angle κ between edge and feed", inside(0, 180), "90 deg")
        .source(TSCH + ", chip section; the nose radius is left out")
        .example("depth=1mm feed=0.15mm/rev edgeAngle=95deg")
        .by(
            v -> {
              ChipSection chip = new ChipSection(v.num("depth"), v.num("feed"), v.num("edgeAngle"));
              return Answer.of("thickness h", LENGTH, chip.thicknessMm())
                  .result("width b", LENGTH, chip.widthMm())
                  .result("area A", SECTION, chip.areaMm2());
            },
            ChipSection.class);
  }

  private static Formula specificForce() {
    return draft("specific-force", "specific cutting force at one chip thickness")
        .law("kc = kc1.1·h^−mc·K")
        .in("thickness", LENGTH, "chip thickness h", ABOVE_0)
        .usual(between(0.03, 1.5), "the power law was not measured there")
        .with(CutInputs.of(ChipCompression.OUTSIDE_TURNING))
        .source(TSCH + ", after Kienzle; constants as marked in the table, uncertainty 20 %")
        .example("thickness=0.14943mm kc11=2300MPa mc=0.21")
        .by(
            v ->
                Answer.of(
                    "specific force kc",
                    STRESS,
                    KienzleForce.specificForceMpa(
                        CutInputs.constants(v), CutInputs.corrections(v), v.num("thickness"))),
            KienzleConstants.class,
            drumline.cutting.force.KienzleCorrections.class,
            drumline.cutting.force.EdgeWear.class,
            ChipCompression.class);
  }

  private static Formula force() {
    return draft("kienzle-force", "main cutting force from the chip section")
        .law("Fc = kc1.1·h^−mc·K·b·h")
        .in("depth", LENGTH, "depth of cut ap", ABOVE_0)
        .in("feed", FEED, "feed f", ABOVE_0)
        .in("edgeAngle", ANGLE, "angle κ between edge and feed", inside(0, 180), "90 deg")
        .with(CutInputs.of(ChipCompression.OUTSIDE_TURNING))
        .source(TSCH + ", after Kienzle; worked example [ESKC]; uncertainty 20 %")
        .example("depth=1mm feed=0.15mm/rev edgeAngle=95deg kc11=2300MPa mc=0.21")
        .by(
            v -> {
              ChipSection chip = new ChipSection(v.num("depth"), v.num("feed"), v.num("edgeAngle"));
              return Answer.NONE
                  .step("chip thickness h", LENGTH, chip.thicknessMm())
                  .step("chip area", SECTION, chip.areaMm2())
                  .step(
                      "specific force kc",
                      STRESS,
                      KienzleForce.specificForceMpa(
                          CutInputs.constants(v), CutInputs.corrections(v), chip.thicknessMm()))
                  .result(
                      "main force Fc",
                      Measure.FORCE,
                      KienzleForce.forceN(CutInputs.constants(v), CutInputs.corrections(v), chip))
                  .noting(KienzleConstants.validity(chip.thicknessMm()));
            },
            KienzleForce.class);
  }

  private static Formula feedForForce() {
    return draft("feed-for-force", "feed at which the cutting force reaches an allowed value")
        .law("f = (F/(kc1.1·K·ap·sin^−mc κ))^(1/(1 − mc))")
        .in("depth", LENGTH, "depth of cut ap", ABOVE_0)
        .in("force", Measure.FORCE, "allowed main force F", ABOVE_0)
        .in("edgeAngle", ANGLE, "angle κ between edge and feed", inside(0, 180), "90 deg")
        .with(CutInputs.of(ChipCompression.OUTSIDE_TURNING))
        .source(TSCH + ", solved for the feed; worked example [AMBATO]")
        .example("depth=3mm force=1500N kc11=1500MPa mc=0")
        .by(
            v ->
                Answer.of(
                    "feed f",
                    FEED,
                    KienzleForce.feedMmPerRev(
                        CutInputs.constants(v),
                        CutInputs.corrections(v),
                        v.num("depth"),
                        v.num("edgeAngle"),
                        v.num("force"))),
            KienzleForce.class);
  }

  private static Formula rake() {
    return draft("rake-factor", "less force with a keener rake")
        .law("Kγ = 1 − c·(γ − γ0)/100")
        .in("rake", ANGLE, "rake γ", between(-30, 40))
        .in(
            "reference",
            ANGLE,
            "rake γ0 of the table: 6 steel, 2 cast iron, 0 aluminium",
            between(-30, 40),
            "6 deg")
        .in("steepness", SHARE, "per cent for each degree", between(0, 1.5), "1 %")
        .source(TSCH + ": 1 % for each degree; 1.5 % from memory")
        .example("rake=-6deg")
        .by(
            v ->
                Answer.of(
                    "factor Kγ",
                    FACTOR,
                    RakeCorrection.ratio(v.num("rake"), v.num("reference"), v.num("steepness"))),
            RakeCorrection.class);
  }

  private static Formula speed() {
    return draft("speed-factor", "a little more force at low cutting speed")
        .law("Kv = 2.023·vc^−0.153 below 100 m/min, 1.380·vc^−0.07 above")
        .in("speed", SPEED, "cutting speed vc", ABOVE_0)
        .usual(between(20, 600), "the curve was not measured there")
        .source("curve from memory, handbooks in German")
        .example("speed=100m/min")
        .by(
            v -> Answer.of("factor Kv", FACTOR, SpeedCorrection.ratio(v.num("speed"))),
            SpeedCorrection.class);
  }

  private static Formula power() {
    return draft("cutting-power", "power of a cutting force, at the cut and at the motor")
        .law("Pc = Fc·vc/60000; Pmot = Pc/η")
        .in("force", Measure.FORCE, "main force Fc", FROM_0)
        .in("speed", SPEED, "cutting speed vc", FROM_0)
        .in("efficiency", FACTOR, "efficiency η of the drive", aboveTo(0, 1), "0.8")
        .usual(between(0.7, 0.95), "drives are seldom so good or so bad")
        .source(TSCH + ", power; efficiency 0.8 there")
        .example("force=514.29N speed=200m/min efficiency=1")
        .by(
            v -> {
              double cutKw = CuttingPower.powerKw(v.num("force"), v.num("speed"));
              return Answer.of("cutting power Pc", POWER, cutKw)
                  .result("motor power", POWER, CuttingPower.motorKw(cutKw, v.num("efficiency")));
            },
            CuttingPower.class);
  }

  private static Formula torque() {
    return draft("cutting-torque", "torque of a cutting force on a diameter")
        .law("M = Fc·d/2000")
        .in("force", Measure.FORCE, "main force Fc", FROM_0)
        .in("diameter", LENGTH, "diameter d at the cut", FROM_0)
        .source(TSCH + ", torque")
        .example("force=1000N diameter=40mm")
        .by(
            v ->
                Answer.of(
                    "torque M", TORQUE, CuttingPower.torqueNm(v.num("force"), v.num("diameter"))),
            CuttingPower.class);
  }

  private static Formula torquePower() {
    return draft("power-of-torque", "power of a torque at a spindle speed")
        .law("P = π·M·n/30000, the handbooks' M·n/9549")
        .in("torque", TORQUE, "torque M", FROM_0)
        .in("speed", ROTATION, "spindle speed n", FROM_0)
        .source("mechanics")
        .example("torque=716.2Nm speed=100rev/min")
        .by(
            v ->
                Answer.of(
                    "power P", POWER, CuttingPower.ofTorqueKw(v.num("torque"), v.num("speed"))),
            CuttingPower.class);
  }

  private static Formula energy() {
    return draft("energy-power", "cutting power from the energy that the chips take")
        .law("P = u·Q/1000")
        .in("unitEnergy", Measure.UNIT_ENERGY, "energy u of a cubic millimetre", ABOVE_0)
        .usual(between(0.3, 10), "no metal of the trade takes so little or so much")
        .in("removal", Measure.REMOVAL_RATE, "removal rate Q", FROM_0)
        .source(
            "[GM] problem 4.18, rounded up to 138 W there; unit energies by material from memory")
        .example("unitEnergy=3.3J/mm³ removal=2500mm³/min")
        .by(
            v ->
                Answer.of(
                    "power P",
                    POWER,
                    SpecificEnergyPower.powerKw(v.num("unitEnergy"), v.num("removal"))),
            SpecificEnergyPower.class);
  }

  private static Formula ring() {
    return draft("turning-energy", "power and force of a turning pass from unit energy")
        .law("Q = π/4·(D² − d²)·f·n/60; P = u·Q/1000; Fc = 60000·P/vc")
        .in("fromDiameter", LENGTH, "diameter D before the pass", ABOVE_0)
        .in("toDiameter", LENGTH, "diameter d after the pass", FROM_0)
        .in("feed", FEED, "feed f", ABOVE_0)
        .in("speed", ROTATION, "spindle speed n", ABOVE_0)
        .in("unitEnergy", Measure.UNIT_ENERGY, "energy u of a cubic millimetre", ABOVE_0)
        .source("[QAMM] worked problem on a titanium rod")
        .example(
            "fromDiameter=75mm toDiameter=65mm feed=0.5mm/rev speed=400rev/min unitEnergy=3J/mm³")
        .by(
            v -> {
              double removal =
                  SpecificEnergyPower.turningRemovalMm3PerS(
                      v.num("fromDiameter"), v.num("toDiameter"), v.num("feed"), v.num("speed"));
              double powerKw = SpecificEnergyPower.powerKw(v.num("unitEnergy"), removal);
              double vc =
                  drumline.cutting.drive.SpindleSpeed.mPerMin(
                      v.num("speed"), v.num("fromDiameter"));
              return Answer.of("power P", POWER, powerKw)
                  .step("cutting speed vc", SPEED, vc)
                  .step("removal rate Q", Measure.REMOVAL_RATE, removal)
                  .result("main force Fc", Measure.FORCE, 60000 * powerKw / vc);
            },
            SpecificEnergyPower.class);
  }

  private static Formula shear() {
    return draft(
            "shear-force", "force of one broach or slotting edge from shear strength and friction")
        .law("λ = atan μ; φ = 45° + γ − λ; Fc = w·c·τ·cos(λ − γ)/(sin φ·cos 45°)")
        .in("shearStrength", STRESS, "shear strength τ", ABOVE_0)
        .in("friction", FACTOR, "friction μ between chip and tool", between(0, 2))
        .in("rake", ANGLE, "rake γ", between(-30, 40))
        .in("width", LENGTH, "width w of cut", ABOVE_0)
        .in("depth", LENGTH, "depth c of cut of one edge", ABOVE_0)
        .source("[GM] problem 4.19 (broaching), shear angle after Lee and Shaffer")
        .example("shearStrength=400MPa friction=0.5 rake=10deg width=81.681mm depth=0.08mm")
        .by(
            v -> {
              LeeShafferForce force =
                  new LeeShafferForce(v.num("shearStrength"), v.num("friction"), v.num("rake"));
              return Answer.of(
                      "force Fc", Measure.FORCE, force.forceN(v.num("width"), v.num("depth")))
                  .step("shear angle φ", ANGLE, force.shearAngleDeg());
            },
            LeeShafferForce.class);
  }
}
