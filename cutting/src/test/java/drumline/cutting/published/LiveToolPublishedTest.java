package drumline.cutting.published;

import drumline.cutting.drive.SpindleSpeed;
import drumline.cutting.force.SpecificEnergyPower;
import drumline.cutting.livetool.FlatWidth;
import drumline.cutting.livetool.PolarFlat;
import drumline.cutting.livetool.PolygonTurning;
import drumline.cutting.milling.CutterRunIn;
import drumline.cutting.milling.MillingChip;
import drumline.cutting.milling.MillingCusp;
import drumline.cutting.milling.MillingPass;
import drumline.cutting.slotting.DoubleStroke;
import drumline.cutting.slotting.SlotStrokes;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Worked examples of milling, polygons and slotting from published/livetool.csv. */
class LiveToolPublishedTest {
  static Stream<PublishedCase> cases() {
    return PublishedCase.read("livetool.csv");
  }

  @ParameterizedTest
  @MethodSource("cases")
  void agreesWithItsSource(PublishedCase example) {
    example.check(answer(example));
  }

  private static double answer(PublishedCase c) {
    return switch (c.quantity()) {
      case "slideFeed" -> pass(c, 200).feedMmPerMin(rpm(c));
      case "slideFeedAt" -> pass(c, 200).feedMmPerMin(c.get("n"));
      case "travel" -> c.get("l") + CutterRunIn.circumferenceMm(c.get("D"), c.get("ae"));
      case "millMin" -> pass(c, c.get("l")).timeS(rpm(c)) / 60;
      case "runIn" -> CutterRunIn.circumferenceMm(c.get("D"), c.get("ae"));
      case "contactArc" -> Math.toRadians(chip(c, 0.1).contactAngleDeg()) * c.get("D") / 2;
      case "energyKw" -> SpecificEnergyPower.powerKw(c.get("u"), c.get("Q"));
      case "energyW" -> Math.ceil(1000 * SpecificEnergyPower.powerKw(c.get("u"), c.get("Q")));
      case "torqueOfPower" -> 30000 * c.get("P") / (Math.PI * c.get("n"));
      case "cuspMm" ->
          MillingCusp.heightUm(c.get("D"), c.get("vf") / (c.get("n") * c.get("z"))) / 1000;
      case "meanChip" -> chip(c, c.get("fz")).meanThicknessMm();
      case "flatWidth" -> FlatWidth.widthMm(2 * c.get("R"), c.get("d"));
      case "polarRpm" -> new PolarFlat(c.get("d"), 10, c.get("vf")).peakRevPerMin();
      case "polarAcceleration" ->
          new PolarFlat(c.get("d"), 10, c.get("vf")).peakAccelerationRadPerS2();
      case "crownUm" -> polygon(c).crownUm(FlatWidth.polygonSideMm(c.get("s"), c.count("z")));
      case "polygonSpeed" -> polygon(c).cuttingMPerMin(c.get("n"));
      case "inserts" -> polygon(c).insertsCount();
      case "doubleStrokeMin" -> DoubleStroke.timeS(c.get("s"), c.get("vc"), c.get("vr")) / 60;
      case "strokes" -> slot(c).strokesCount();
      case "slotS" -> slot(c).timeS();
      default -> throw c.unknown();
    };
  }

  private static double rpm(PublishedCase c) {
    return SpindleSpeed.revPerMin(c.get("v"), c.get("D"));
  }

  private static MillingPass pass(PublishedCase c, double lengthMm) {
    double runInMm =
        c.inputs().containsKey("ae") ? CutterRunIn.circumferenceMm(c.get("D"), c.get("ae")) : 0;
    return new MillingPass(lengthMm, runInMm, 0, c.get("fz"), c.count("z"));
  }

  private static MillingChip chip(PublishedCase c, double feedPerToothMm) {
    return new MillingChip(c.get("D"), c.get("ae"), feedPerToothMm, 90, MillingChip.Place.ONE_SIDE);
  }

  private static PolygonTurning polygon(PublishedCase c) {
    return new PolygonTurning(c.get("s"), c.count("z"), c.get("rt"));
  }

  private static SlotStrokes slot(PublishedCase c) {
    return new SlotStrokes(
        c.get("depth"),
        c.get("ap"),
        2,
        c.get("l"),
        c.get("c"),
        c.get("vc"),
        c.get("vr"),
        c.get("turn"),
        1,
        0,
        0);
  }
}
