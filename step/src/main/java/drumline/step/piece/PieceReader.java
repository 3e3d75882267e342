package drumline.step.piece;

import drumline.step.contour.BoreSteps;
import drumline.step.contour.Envelope;
import drumline.step.contour.OutsideSteps;
import drumline.step.contour.Recess;
import drumline.step.contour.Segment;
import drumline.step.contour.Step;
import drumline.step.feature.FlatFinder;
import drumline.step.feature.Found;
import drumline.step.feature.HoleFinder;
import drumline.step.feature.RestFinder;
import drumline.step.feature.Scene;
import drumline.step.feature.SlotFinder;
import drumline.step.feature.SocketFinder;
import drumline.step.solid.Face;
import drumline.step.space.Frame;
import drumline.step.turned.Strand;
import drumline.step.turned.Strands;
import java.util.ArrayList;
import java.util.List;

/** Reads the faces of a solid as a turned piece around a known axis. */
final class PieceReader {
  private final Frame axis;
  private final List<Face> faces;
  private final List<Strand> strands;

  PieceReader(Frame axis, List<Face> faces) {
    this.axis = axis;
    this.faces = faces;
    this.strands = new Strands(axis).readAll(faces);
  }

  TurnedPiece read() {
    double length = length();
    Scene scene = new Scene(axis, length, faces);
    SocketFinder sockets = new SocketFinder(scene);
    List<Face> others =
        faces.stream()
            .filter(f -> strands.stream().noneMatch(s -> s.face().id() == f.id()))
            .toList();
    Envelope envelope = new Envelope(axis, strands, others, sockets.rooms());
    List<Segment> outer = envelope.outside();
    List<Segment> inner = envelope.inside();
    scene.contour(outer, inner);
    List<String> notes = new ArrayList<>();
    OutsideSteps outside = OutsideSteps.of(outer, notes);
    BoreSteps bores = BoreSteps.of(inner, length, notes);
    ContourMatch match = new ContourMatch(outer, inner, length);
    strands.stream().filter(match::isOn).forEach(s -> scene.explain(s.face()));
    List<Found> features = new ArrayList<>(sockets.features());
    features.addAll(new HoleFinder(scene).features());
    features.addAll(new SlotFinder(scene).features());
    FlatFinder flats = new FlatFinder(scene);
    features.addAll(flats.features(largestTurned(outside)));
    List<Recess> grooves = new ArrayList<>(outside.grooves());
    grooves.addAll(bores.grooves());
    grooves.addAll(FaceGrooves.find(strands, scene, length));
    RestFinder.tell(scene);
    notes.addAll(scene.notes());
    return new TurnedPiece(length, outside.steps(), bores, grooves, features, flats.bar(), notes);
  }

  private double length() {
    double high = 0;
    for (Face face : faces) {
      high = Math.max(high, face.span(axis)[1]);
    }
    for (Strand strand : strands) {
      high = Math.max(high, strand.z1());
    }
    return high;
  }

  private static double largestTurned(OutsideSteps outside) {
    return outside.steps().stream()
        .filter(Step::isTurned)
        .mapToDouble(s -> Math.max(s.r0(), s.r1()))
        .max()
        .orElse(0);
  }
}
