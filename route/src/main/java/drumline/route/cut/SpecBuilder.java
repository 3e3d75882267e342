package drumline.route.cut;

import drumline.cutting.force.ChipCompression;
import drumline.cutting.force.CuttingLoad;
import drumline.cutting.force.EdgeWear;
import drumline.cutting.force.KienzleConstants;
import drumline.cutting.force.KienzleCorrections;
import drumline.route.draft.ToolChoice;
import drumline.shop.material.Material;
import drumline.shop.operation.CutSpec;
import drumline.shop.operation.Loads;

/** Puts the figures of a cut together; what is not set is nought. */
final class SpecBuilder {
  private final ToolChoice choice;
  private SpeedWindow speeds = new SpeedWindow(0, 0, "");
  private double revolutionsCount;
  private double fixedS;
  private double dwellRevCount;
  private double toolRevPerMin;
  private double diameterMm;
  private double feedMmPerRev;
  private double depthMm;
  private int passCount = 1;
  private double travelMm;
  private double approachMm;

  SpecBuilder(ToolChoice choice) {
    this.choice = choice;
  }

  SpecBuilder speeds(SpeedWindow window) {
    speeds = window;
    return this;
  }

  SpecBuilder time(double revolutions, double seconds) {
    revolutionsCount = revolutions;
    fixedS = seconds;
    return this;
  }

  SpecBuilder dwell(double revolutions) {
    dwellRevCount = revolutions;
    return this;
  }

  SpecBuilder driven(double revPerMin) {
    toolRevPerMin = revPerMin;
    return this;
  }

  SpecBuilder on(double diameter) {
    diameterMm = diameter;
    return this;
  }

  SpecBuilder chip(double feed, double depth, int passes) {
    feedMmPerRev = feed;
    depthMm = depth;
    passCount = passes;
    return this;
  }

  SpecBuilder way(double travel, double approach) {
    travelMm = travel;
    approachMm = approach;
    return this;
  }

  Cut with(Loads loads) {
    return new Cut(
        new CutSpec(
            revolutionsCount,
            fixedS,
            dwellRevCount,
            speeds.lowestRevPerMin(),
            speeds.highestRevPerMin(),
            speeds.limit(),
            toolRevPerMin,
            diameterMm,
            feedMmPerRev,
            depthMm,
            passCount,
            travelMm,
            approachMm,
            choice.window().life()),
        loads);
  }

  /** Loads of a tool that stands, cutting in the turning work, moving along the axis. */
  static Loads alongAxis(CuttingLoad load) {
    return new Loads(
        load.mainForceN(),
        load.axialForceN(),
        load.radialForceN(),
        load.torqueNm(),
        0,
        load.axialForceN());
  }

  /** Loads of a tool that stands, cutting in the turning work, moving towards the axis. */
  static Loads acrossAxis(CuttingLoad load) {
    return new Loads(
        load.mainForceN(),
        load.axialForceN(),
        load.radialForceN(),
        load.torqueNm(),
        0,
        load.radialForceN());
  }

  static KienzleConstants constants(Material material) {
    return new KienzleConstants(
        material.force().specificForceMpa(), material.force().exponentRatio());
  }

  /** Corrections of a worn edge with the given compression of the chip. */
  static KienzleCorrections worn(ChipCompression compression) {
    return KienzleCorrections.NONE.withWear(EdgeWear.WORN).withCompression(compression);
  }
}
