package drumline.app.ask;

import drumline.shape.gltf.GlbFile;
import drumline.shape.mesh.PieceMesh;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import drumline.shop.problem.Problem;
import java.util.List;
import java.util.Optional;

/**
 * The finished piece in space, to look at.
 *
 * @param glb binary glTF 2.0 file; empty where no closed surface came about
 * @param problems why not
 */
public record PieceInSpace(Optional<byte[]> glb, List<Problem> problems) {

  /** Copies the list. */
  public PieceInSpace {
    problems = List.copyOf(problems);
  }

  /** The piece made from a bar. */
  public static PieceInSpace of(Part part, Bar bar) {
    try {
      byte[] file = GlbFile.of(PieceMesh.of(part, bar), part.name());
      return new PieceInSpace(Optional.of(file), List.of());
    } catch (IllegalStateException e) {
      Problem problem =
          Problem.warning(
              "no-mesh",
              "part",
              "no closed surface: " + e.getMessage(),
              "features whose surfaces do not only touch",
              "Maybe two features end exactly in one another; the study is not concerned.");
      return new PieceInSpace(Optional.empty(), List.of(problem));
    }
  }
}
