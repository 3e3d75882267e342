package drumline.step.contour;

import drumline.step.solid.Face;
import drumline.step.space.Frame;
import drumline.step.surface.Surface;
import drumline.step.turned.Crossings;
import drumline.step.turned.Near;
import drumline.step.turned.Strand;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * The outermost and the innermost surface all along the axis. Between two places where any face
 * begins or ends, the outermost turned face whose outer side is free is the outside; where corners
 * of flats stand farther out, their circle is. The innermost turned face is the bore if its inner
 * side is free.
 */
public final class Envelope {
  private static final double SAME_PLACE = 1e-3;
  private static final int TRIES = 7;

  private final Frame axis;
  private final List<Strand> strands;
  private final List<Face> others;
  private final List<Socket> sockets;
  private final double[] places;

  /** An inside form: where it lies and the radius of the circle that fits into it. */
  public record Socket(double z0, double z1, double radius) {}

  /**
   * All that lies along an axis, z = 0 at the front.
   *
   * @param strands turned faces
   * @param others faces that are not turned
   * @param sockets inside forms
   */
  public Envelope(Frame axis, List<Strand> strands, List<Face> others, List<Socket> sockets) {
    this.axis = axis;
    this.strands = List.copyOf(strands);
    this.others = List.copyOf(others);
    this.sockets = List.copyOf(sockets);
    this.places = places();
  }

  private double[] places() {
    TreeSet<Double> all = new TreeSet<>();
    strands.forEach(strand -> all.addAll(List.of(strand.z0(), strand.z1())));
    for (Face face : others) {
      double[] span = face.span(axis);
      all.add(span[0]);
      all.add(span[1]);
    }
    sockets.forEach(socket -> all.addAll(List.of(socket.z0(), socket.z1())));
    List<Double> distinct = new ArrayList<>();
    for (double z : all) {
      if (distinct.isEmpty() || z - distinct.get(distinct.size() - 1) > SAME_PLACE) {
        distinct.add(z);
      }
    }
    return distinct.stream().mapToDouble(d -> d).toArray();
  }

  /** The outside, front to back. */
  public List<Segment> outside() {
    List<Segment> segments = new ArrayList<>();
    for (int i = 0; i + 1 < places.length; i++) {
      add(segments, outer(places[i], places[i + 1]));
    }
    return segments;
  }

  /** The bores, front to back; where the piece is solid at its axis nothing stands. */
  public List<Segment> inside() {
    List<Segment> segments = new ArrayList<>();
    for (int i = 0; i + 1 < places.length; i++) {
      inner(places[i], places[i + 1]).ifPresent(segment -> add(segments, segment));
    }
    return segments;
  }

  private static void add(List<Segment> segments, Segment next) {
    int last = segments.size() - 1;
    if (last >= 0 && segments.get(last).goesOn(next)) {
      segments.set(last, segments.get(last).joined(next));
    } else {
      segments.add(next);
    }
  }

  private List<Strand> over(double from, double to) {
    double middle = (from + to) / 2;
    return strands.stream()
        .filter(strand -> !strand.isSquare() && strand.covers(middle))
        .sorted(Comparator.comparingDouble(strand -> strand.at(middle)))
        .toList();
  }

  private Segment outer(double from, double to) {
    List<Strand> here = over(from, to);
    double middle = (from + to) / 2;
    Strand outermost = null;
    for (Strand strand : here) {
      if (strand.outR() > 0) {
        outermost = strand;
      }
    }
    double[] corners = corners(from, to);
    double cornerMm = Math.max(corners[0], corners[1]);
    if (outermost != null && outermost.at(middle) >= cornerMm - 2 * Near.MM) {
      return Segment.of(outermost, from, to);
    }
    if (outermost != null && cornerMm <= greatest(outermost, from, to) + 2 * Near.MM) {
      return Segment.of(outermost, from, to);
    }
    boolean isLevel = Math.abs(corners[0] - corners[1]) < 2 * Near.MM || hasFreeForm(from, to);
    return new Segment(
        from, isLevel ? cornerMm : corners[0], to, isLevel ? cornerMm : corners[1], null, false);
  }

  private static double greatest(Strand strand, double from, double to) {
    return Math.max(strand.at(from), strand.at(to));
  }

  /** Greatest radius of bounds of faces that are not turned, near both ends of a stretch. */
  private double[] corners(double from, double to) {
    double[] greatest = new double[2];
    for (int i = 0; i < TRIES; i++) {
      double share = 0.02 + 0.96 * i / (TRIES - 1);
      double z = from + (to - from) * share;
      for (Face face : others) {
        for (double r : Crossings.radiiOrGreatest(face, axis, z)) {
          int side = i < TRIES / 2 ? 0 : 1;
          greatest[side] = Math.max(greatest[side], r);
          if (i == TRIES / 2) {
            greatest[0] = Math.max(greatest[0], r);
          }
        }
      }
    }
    return greatest;
  }

  private boolean hasFreeForm(double from, double to) {
    double middle = (from + to) / 2;
    return others.stream()
        .filter(face -> face.surface() instanceof Surface.FreeForm)
        .map(face -> face.span(axis))
        .anyMatch(span -> span[0] < middle && middle < span[1]);
  }

  private Optional<Segment> inner(double from, double to) {
    List<Strand> here = over(from, to);
    double middle = (from + to) / 2;
    Optional<Segment> turned =
        here.isEmpty() || here.get(0).outR() > 0
            ? Optional.empty()
            : Optional.of(Segment.of(here.get(0), from, to));
    return sockets.stream()
        .filter(socket -> socket.z0() < middle && middle < socket.z1())
        .findFirst()
        .filter(
            socket -> turned.isEmpty() || here.get(0).at(middle) > socket.radius() + 2 * Near.MM)
        .map(socket -> new Segment(from, socket.radius(), to, socket.radius(), null, true))
        .or(() -> turned);
  }
}
