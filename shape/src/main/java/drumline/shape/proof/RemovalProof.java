package drumline.shape.proof;

import drumline.shape.section.HalfSection;
import drumline.shape.section.PartSection;
import drumline.shape.workpiece.PositionState.Hold;
import drumline.shape.workpiece.WorkpieceStates;
import drumline.shop.operation.CutRegion;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether the operations' cuts make the piece of the print: the bar without all that was removed,
 * against the print, both in the half-section.
 *
 * <p>Known limits: only turned surfaces are compared; flats, cross holes, slots, knurls, threads'
 * flanks and text are outside of it. Of hexagon and square bar the circle across corners is taken.
 * A drill's cone beyond a bore's depth may be there or not, as the print leaves open: what a
 * smaller drill leaves of it is not told.
 *
 * @param findings places that differ, front to back, left on before gouged
 * @param ignoredUm places thinner than this, in micrometres, are not told
 * @param hold whether the piece ends parted from the bar
 */
public record RemovalProof(List<Finding> findings, double ignoredUm, Hold hold) {

  /** Thinnest difference told unless asked otherwise: above the arcs' chord error. */
  public static final double USUAL_IGNORED_UM = 5;

  /** Copies the list. */
  public RemovalProof {
    findings = List.copyOf(findings);
  }

  /** Compares the last state with the print, leaving out what is thinner than 5 µm. */
  public static RemovalProof of(Bar bar, Part part, WorkpieceStates states) {
    return of(bar, part, states, USUAL_IGNORED_UM);
  }

  /** Compares the last state with the print, whose drilled ends have this point angle. */
  public static RemovalProof of(
      Bar bar, Part part, WorkpieceStates states, double ignoredUm, double pointAngleDeg) {
    if (!(ignoredUm >= 2)) {
      throw new IllegalArgumentException("ignoredUm: " + ignoredUm + ", allowed: at least 2");
    }
    return compare(part, PartSection.of(part, bar, pointAngleDeg), states, ignoredUm);
  }

  /**
   * Compares the last state with the print.
   *
   * @param ignoredUm thinnest difference told, in micrometres, at least 2: arcs are chords
   * @throws IllegalArgumentException if {@code ignoredUm} is less than 2 or not a number
   */
  public static RemovalProof of(Bar bar, Part part, WorkpieceStates states, double ignoredUm) {
    return of(bar, part, states, ignoredUm, PartSection.USUAL_POINT_ANGLE_DEG);
  }

  private static RemovalProof compare(
      Part part, PartSection print, WorkpieceStates states, double ignoredUm) {
    FindingPlace place = new FindingPlace(part, print);
    HalfSection made = states.last();
    Hold hold = holdAtEnd(states);
    HalfSection compared = hold == Hold.PARTED ? made : made.intersect(upToCutOff(part, made));
    List<Finding> findings = new ArrayList<>();
    HalfSection leftOn = compared.subtract(print.piece()).subtract(print.cones());
    for (HalfSection region : leftOn.bodies()) {
      place.find(Finding.Kind.LEFT_ON, region, ignoredUm).ifPresent(findings::add);
    }
    for (HalfSection region : print.piece().subtract(compared).bodies()) {
      place.find(Finding.Kind.GOUGED, region, ignoredUm).ifPresent(findings::add);
    }
    return new RemovalProof(findings, ignoredUm, hold);
  }

  /** Whether the cuts make the print's turned surfaces and the piece is parted. */
  public boolean holds() {
    return findings.isEmpty() && hold == Hold.PARTED;
  }

  private static Hold holdAtEnd(WorkpieceStates states) {
    int count = states.positions().size();
    return count == 0 ? Hold.IN_BAR : states.positions().get(count - 1).hold();
  }

  private static HalfSection upToCutOff(Part part, HalfSection made) {
    return HalfSection.of(
        CutRegion.rectangle(made.fromZMm() - 1, part.lengthMm(), 0, made.outerRMm() + 1));
  }
}
