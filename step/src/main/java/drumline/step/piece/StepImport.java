package drumline.step.piece;

import drumline.shop.problem.Problem;
import drumline.step.exchange.ExchangeFault;
import drumline.step.exchange.ExchangeFile;
import drumline.step.solid.Face;
import drumline.step.solid.Solid;
import drumline.step.solid.SolidReader;
import drumline.step.space.Frame;
import drumline.step.space.Vec;
import drumline.step.turned.AxisVote;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A turned piece out of an exchange file of ISO 10303-21 that follows AP203, AP214 or AP242.
 *
 * @param piece the piece; empty where something is broken
 * @param name product's name
 * @param number product's number, may be empty
 * @param isInch whether the file's lengths are in inches
 * @param schemas names of the schemas that the file follows
 * @param faceCount faces of the solid
 * @param problems what is wrong
 */
public record StepImport(
    Optional<TurnedPiece> piece,
    String name,
    String number,
    boolean isInch,
    List<String> schemas,
    int faceCount,
    List<Problem> problems) {

  /** Copies the lists. */
  public StepImport {
    schemas = List.copyOf(schemas);
    problems = List.copyOf(problems);
  }

  /**
   * Reads a file; no content makes it throw.
   *
   * @param fileName name for messages
   * @param isFlipped whether the front is to be the other end than the rule chooses
   * @param solid which solid of the file, from 1; 0 for the only one
   */
  public static StepImport read(String fileName, byte[] bytes, boolean isFlipped, int solid) {
    try {
      return imported(ExchangeFile.read(fileName, bytes), isFlipped, solid);
    } catch (ExchangeFault fault) {
      return failed(fault.problem());
    }
  }

  private static StepImport failed(Problem problem) {
    return new StepImport(Optional.empty(), "", "", false, List.of(), 0, List.of(problem));
  }

  private static StepImport imported(ExchangeFile file, boolean isFlipped, int number) {
    SolidReader reader = new SolidReader(file);
    List<Integer> solids = reader.solids();
    if (solids.isEmpty()) {
      return failed(
          Problem.error(
              "no-solid",
              file.name(),
              "a file without a solid; schema " + String.join(", ", file.schemas()),
              "a solid with exact surfaces (MANIFOLD_SOLID_BREP)",
              "Maybe the file holds only wires, facets or a drawing."));
    }
    if (number < 0 || number > solids.size() || (number == 0 && solids.size() > 1)) {
      return failed(severalSolids(file, reader, solids, number));
    }
    Solid solid = reader.read(solids.get(Math.max(0, number - 1)));
    Optional<Frame> axis = AxisVote.find(solid.faces());
    if (axis.isEmpty()) {
      return failed(
          Problem.error(
              "no-axis",
              file.name(),
              solid.faces().size() + " faces, none of them turned",
              "a turned piece",
              ""));
    }
    List<String> notes = new ArrayList<>();
    if (reader.occurrences() > 0) {
      notes.add(
          "the file is an assembly with "
              + reader.occurrences()
              + " placed component(s); the piece is taken as it is, wherever it is placed");
    }
    solid.remarks().forEach(remark -> notes.add("NOT UNDERSTOOD: " + remark));
    TurnedPiece piece = oriented(axis.get(), solid.faces(), isFlipped, notes);
    return new StepImport(
        Optional.of(piece.withNotesBefore(notes)),
        solid.name(),
        solid.number(),
        solid.scale().isInch(),
        file.schemas(),
        solid.faces().size(),
        List.of());
  }

  private static TurnedPiece oriented(
      Frame found, List<Face> faces, boolean isFlipped, List<String> notes) {
    Frame axis = forwards(found, faces);
    TurnedPiece piece = new PieceReader(axis, faces).read();
    if (piece.outside().isEmpty()) {
      return piece;
    }
    EndChoice choice = EndChoice.of(piece);
    notes.add(
        choice.reason()
            + (isFlipped ? "; it was turned round as asked" : "; --flip turns the piece round"));
    return choice.isTurned() == isFlipped
        ? piece
        : new PieceReader(turned(axis, piece.lengthMm()), faces).read();
  }

  /** The axis with its greatest component positive. */
  private static Frame forwards(Frame axis, List<Face> faces) {
    Vec z = axis.z();
    double most =
        Math.abs(z.x()) > Math.max(Math.abs(z.y()), Math.abs(z.z())) - 1e-9
            ? z.x()
            : Math.abs(z.y()) > Math.abs(z.z()) - 1e-9 ? z.y() : z.z();
    if (most >= 0) {
      return axis;
    }
    return turned(axis, new PieceReader(axis, faces).read().lengthMm());
  }

  private static Frame turned(Frame axis, double length) {
    return new Frame(
        axis.origin().plus(axis.z().times(length)),
        axis.x(),
        axis.y().times(-1),
        axis.z().times(-1));
  }

  private static Problem severalSolids(
      ExchangeFile file, SolidReader reader, List<Integer> solids, int number) {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < Math.min(12, solids.size()); i++) {
      Solid solid = reader.read(solids.get(i));
      names.add(
          String.format(
              Locale.ROOT, "%d \"%s\" (%d faces)", i + 1, solid.name(), solid.faces().size()));
    }
    return Problem.error(
        "several-solids",
        file.name(),
        number == 0 ? solids.size() + " solids" : "solid " + number + " of " + solids.size(),
        "one of them: " + String.join(", ", names),
        "Maybe choose one with --solid.");
  }
}
