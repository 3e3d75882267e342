package drumline.app.formula.cut;

import static drumline.app.formula.Allowed.ABOVE_0;
import static drumline.app.formula.Allowed.between;
import static drumline.app.formula.Measure.FACTOR;
import static drumline.app.formula.Measure.FORCE;
import static drumline.app.formula.Measure.LENGTH;
import static drumline.app.formula.Measure.POWER;
import static drumline.app.formula.Measure.STRESS;
import static drumline.app.formula.Measure.TORQUE;

import drumline.app.formula.Answer;
import drumline.app.formula.FormulaDraft;
import drumline.app.formula.Values;
import drumline.cutting.force.ChipCompression;
import drumline.cutting.force.CuttingLoad;
import drumline.cutting.force.EdgeWear;
import drumline.cutting.force.KienzleConstants;
import drumline.cutting.force.KienzleCorrections;
import drumline.cutting.tables.KienzleTable;
import drumline.cutting.tables.KienzleTable.Family;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** Inputs that all load formulas share: material, corrections; and the figures of a load. */
final class CutInputs {
  private CutInputs() {}

  /** Material by name, or its two constants; factors for edge and chip. */
  static Function<FormulaDraft, FormulaDraft> of(ChipCompression compression) {
    return draft ->
        material(draft)
            .choice("wear", "state of the edge, factor Kver", EdgeWear.FRESH)
            .choice("compression", "crowding of the chip, factor Kst", compression)
            .in("correction", FACTOR, "further factors, rake and speed, multiplied", ABOVE_0, "1");
  }

  /** Material by name, or its two constants. */
  static FormulaDraft material(FormulaDraft draft) {
    List<String> materials =
        KienzleTable.rows().stream()
            .filter(row -> row.family() == Family.PROPOSED)
            .map(KienzleTable.Row::material)
            .toList();
    List<String> families = Arrays.stream(Family.values()).map(CutInputs::word).toList();
    return draft
        .optionalChoice("material", "material whose kc1.1 and mc are taken", materials)
        .optionalChoice("family", "family of the constants, proposed if left out", families)
        .optional("kc11", STRESS, "specific force kc1.1, in place of the material's", ABOVE_0)
        .optional("mc", FACTOR, "exponent mc, in place of the material's", between(0, 0.99));
  }

  /**
   * The constants that the values name.
   *
   * @throws IllegalArgumentException if only one of the two is given, or the table has no such row
   */
  static KienzleConstants constants(Values v) {
    if (v.has("kc11") != v.has("mc")) {
      throw new IllegalArgumentException(
          "kc11 and mc is one alone; allowed is both together, since they belong to one family.");
    }
    return v.has("kc11") ? new KienzleConstants(v.num("kc11"), v.num("mc")) : row(v).constants();
  }

  private static KienzleTable.Row row(Values v) {
    if (!v.has("material")) {
      throw new IllegalArgumentException(
          "material is missing; allowed is material=… of the list, or kc11=…MPa and mc=….");
    }
    String material = v.text("material");
    Family family = v.has("family") ? v.choice("family", Family.class) : Family.PROPOSED;
    return KienzleTable.findRow(material, family)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "family is "
                        + word(family)
                        + "; allowed is one that the table has for "
                        + material
                        + ": "
                        + families(material)
                        + "."));
  }

  private static String families(String material) {
    return String.join(
        ", ",
        KienzleTable.rows().stream()
            .filter(row -> row.material().equals(material))
            .map(row -> word(row.family()))
            .toList());
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Where the constants come from and how far they are known. */
  private static String origin(Values v) {
    if (v.has("kc11")) {
      return "given";
    }
    KienzleTable.Row row = row(v);
    return word(row.provenance()) + ": " + row.source();
  }

  /** The corrections that the values name. */
  static KienzleCorrections corrections(Values v) {
    return new KienzleCorrections(1, v.num("correction"), 1, 1)
        .withWear(v.choice("wear", EdgeWear.class))
        .withCompression(v.choice("compression", ChipCompression.class));
  }

  /** Constants and corrections as steps, the load's figures as results. */
  static Answer load(Values v, CuttingLoad load) {
    KienzleConstants constants = constants(v);
    return Answer.NONE
        .step("constants from", origin(v))
        .step("kc1.1", STRESS, constants.kc11Mpa())
        .step("mc", FACTOR, constants.mcRatio())
        .step("all corrections K", FACTOR, corrections(v).productRatio())
        .step("chip thickness h", LENGTH, load.chipThicknessMm())
        .step("specific force kc·K", STRESS, load.specificForceMpa())
        .result("main force Fc", FORCE, load.mainForceN())
        .result("force along the axis", FORCE, load.axialForceN())
        .result("force towards the axis", FORCE, load.radialForceN())
        .result("torque", TORQUE, load.torqueNm())
        .result("cutting power", POWER, load.powerKw())
        .noting(load.validity());
  }
}
