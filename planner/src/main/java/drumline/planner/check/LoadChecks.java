package drumline.planner.check;

import static drumline.planner.check.Floor.say;

import drumline.cycle.timeline.TimeElement;
import drumline.shop.machine.SpindleDrive;
import drumline.shop.machine.Workholding;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Whether spindle, collet and slides bear what cuts at one moment. */
final class LoadChecks {
  /** Share of the limit that floating-point error may add. */
  private static final double ROUNDING_RATIO = 1e-6;

  /** Greatest part of a collet's grip that speed may take (EN 1550). */
  private static final double GREATEST_LOSS_RATIO = 0.67;

  private final Floor floor;

  LoadChecks(Floor floor) {
    this.floor = floor;
  }

  List<Finding> findings() {
    List<String> torque = new ArrayList<>();
    List<String> power = new ArrayList<>();
    List<String> grip = new ArrayList<>();
    eachMoment(moment -> checkDrive(moment, torque, power));
    eachMoment(moment -> checkGrip(moment, grip));
    String spots = floor.spots().size() + " moments";
    return List.of(
        Finding.of("spindle-torque", spots, torque),
        Finding.of("spindle-power", spots, power),
        Finding.of("grip", spots, grip),
        Finding.of("slide-thrust", floor.spots().size() + " operations", thrust()));
  }

  /**
   * What cuts together.
   *
   * @param spots in cut, at least one
   * @param revPerMin speed of the spindle
   */
  private record Moment(List<Spot> spots, double revPerMin) {
    double torqueNm() {
      return spots.stream().mapToDouble(spot -> spot.operation().loads().torqueNm()).sum();
    }

    double thrustN() {
      return spots.stream().mapToDouble(spot -> spot.operation().loads().thrustN()).sum();
    }

    String words() {
      return spots.stream().map(Spot::id).toList() + say(" at %.0f rev/min", revPerMin);
    }
  }

  /** Loads are greatest when a cut begins, since none grows while it lasts. */
  private void eachMoment(Consumer<Moment> check) {
    for (Spot spot : floor.spots()) {
      double startS =
          spot.span().elements().stream()
              .filter(e -> e.kind() == TimeElement.Kind.CUT)
              .mapToDouble(TimeElement::startS)
              .findFirst()
              .orElse(spot.span().startS());
      List<Spot> now = new ArrayList<>();
      for (Spot other : floor.at(spot.position())) {
        if (other.equals(spot) || other.cutsAt(startS)) {
          now.add(other);
        }
      }
      double turning =
          now.stream().filter(Spot::turns).mapToDouble(Spot::revPerMin).max().orElse(0);
      double free = now.stream().mapToDouble(Spot::revPerMin).max().orElse(0);
      check.accept(new Moment(now, turning > 0 ? turning : free));
    }
  }

  private void checkDrive(Moment moment, List<String> torque, List<String> power) {
    boolean isBack = floor.isBack(moment.spots.get(0));
    SpindleDrive drive = floor.machine().drive();
    double mostNm = isBack ? floor.pickUp().torqueNm() : drive.torqueNm();
    double mostKw = isBack ? floor.pickUp().powerKw() : drive.powerKw();
    double kw = moment.torqueNm() * moment.revPerMin * Math.PI / 30 / 1000;
    if (moment.torqueNm() > mostNm * (1 + ROUNDING_RATIO)) {
      torque.add(say("%s take %.1f of %.1f Nm", moment.words(), moment.torqueNm(), mostNm));
    }
    if (kw > mostKw * (1 + ROUNDING_RATIO)) {
      power.add(say("%s take %.2f of %.2f kW", moment.words(), kw, mostKw));
    }
  }

  /**
   * √((2·ΣM/d)² + (ΣF)²)·S ≤ μ·(F0 − m·r·ω²), and m·r·ω² ≤ 0.67·F0; in the pick-up spindle a stop
   * takes the thrust, so F = 0.
   */
  private void checkGrip(Moment moment, List<String> broken) {
    boolean isBack = floor.isBack(moment.spots.get(0));
    Workholding collet = floor.machine().workholding();
    double restN = isBack ? floor.pickUp().gripN() : collet.gripN();
    double radiusM = (isBack ? floor.diameters().pickUpMm() : floor.diameters().drumMm()) / 2000;
    double turnsPerS = moment.revPerMin / 60;
    double lossN =
        4
            * Math.PI
            * Math.PI
            * turnsPerS
            * turnsPerS
            * collet.jawMassKg()
            * collet.jawRadiusMm()
            / 1000;
    double aroundN = moment.torqueNm() / radiusM;
    double alongN = isBack ? 0 : moment.thrustN();
    double pullN = Math.sqrt(aroundN * aroundN + alongN * alongN);
    double holdN = collet.frictionRatio() * (restN - lossN) / collet.safetyRatio();
    if (pullN > holdN * (1 + ROUNDING_RATIO)
        || (pullN > 0 && lossN > GREATEST_LOSS_RATIO * restN * (1 + ROUNDING_RATIO))) {
      broken.add(
          say(
              "%s pull %.0f N of %.0f N that the collet holds safely; speed takes %.0f N of %.0f N",
              moment.words(), pullN, holdN, lossN, restN));
    }
  }

  private List<String> thrust() {
    return floor.spots().stream()
        .filter(spot -> spot.operation().loads().feedForceN() > spot.slide().thrustN())
        .map(
            spot ->
                say(
                    "%s needs %.0f N of %.0f N",
                    spot.words(), spot.operation().loads().feedForceN(), spot.slide().thrustN()))
        .toList();
  }
}
