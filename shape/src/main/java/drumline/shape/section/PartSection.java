package drumline.shape.section;

import drumline.shop.contour.End;
import drumline.shop.feature.Groove;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import drumline.shop.problem.Problem;
import java.util.ArrayList;
import java.util.List;

/**
 * The finished piece in the half-section: steps, tapers, edges, bores with drill cones, grooves.
 *
 * <p>Known limits: threads stand as their major diameter outside and as the bore step's own
 * diameter inside; what is not turned (flats, cross holes, slots, knurls, text) is not in it; the
 * bar's own hexagon or square stands as its circle across corners.
 *
 * @param piece the finished piece
 * @param outside the same without bores, inside grooves and face grooves: what is seen from outside
 * @param bore all the room inside
 * @param cones cones of drills beyond the depths of their bores: a print lets them be there, so
 *     material may stand in them where a smaller drill went before a boring tool
 * @param problems edges that do not fit where the print puts them; they are drawn sharp
 */
public record PartSection(
    HalfSection piece,
    HalfSection outside,
    HalfSection bore,
    HalfSection cones,
    List<Problem> problems) {

  /** Point angle of a twist drill in degrees where nothing else is said: common practice. */
  public static final double USUAL_POINT_ANGLE_DEG = 118;

  /** Copies the list. */
  public PartSection {
    problems = List.copyOf(problems);
  }

  /** The piece made from this bar, with drill cones of the usual point angle. */
  public static PartSection of(Part part, Bar bar) {
    return of(part, bar, USUAL_POINT_ANGLE_DEG);
  }

  /**
   * The piece made from this bar.
   *
   * @param pointAngleDeg point angle of the drills, greater than 0 and less than 180
   * @throws IllegalArgumentException if the point angle is not in its range
   */
  public static PartSection of(Part part, Bar bar, double pointAngleDeg) {
    if (!(pointAngleDeg > 0 && pointAngleDeg < 180)) {
      throw new IllegalArgumentException(
          "pointAngleDeg: " + pointAngleDeg + ", allowed: greater than 0, less than 180");
    }
    OutsideSection turned = OutsideSection.of(part.outside(), bar);
    BoreSection front = BoreSection.of(part.frontBore(), End.FRONT, part.lengthMm(), pointAngleDeg);
    BoreSection back = BoreSection.of(part.backBore(), End.BACK, part.lengthMm(), pointAngleDeg);
    HalfSection outside = turned.solid();
    HalfSection bore = front.room().union(back.room()).union(tubeBore(bar, part.lengthMm()));
    HalfSection faces = HalfSection.EMPTY;
    double farOutMm = outside.outerRMm() + 1;
    for (Groove groove : part.features(Groove.class)) {
      HalfSection room = GrooveSection.of(groove, part.lengthMm(), farOutMm);
      switch (groove.place()) {
        case OUTSIDE -> outside = outside.subtract(room);
        case INSIDE -> bore = bore.union(room);
        case FACE -> faces = faces.union(room);
      }
    }
    HalfSection piece = outside.subtract(bore).subtract(faces);
    List<Problem> problems = new ArrayList<>(turned.problems());
    problems.addAll(front.problems());
    problems.addAll(back.problems());
    return new PartSection(
        piece, outside, bore.union(faces), front.cones().union(back.cones()), problems);
  }

  private static HalfSection tubeBore(Bar bar, double lengthMm) {
    return bar.boreMm() > 0
        ? BarSection.cylinder(0, lengthMm, 0, bar.boreMm() / 2)
        : HalfSection.EMPTY;
  }
}
