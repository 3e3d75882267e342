package drumline.step.solid;

import java.util.List;

/**
 * A solid of an exchange file, its lengths in mm.
 *
 * @param id number of its instance
 * @param name name of the product, or of the solid
 * @param number number of the product, may be empty
 * @param faces its faces
 * @param scale what the file's numbers mean
 * @param remarks what was read with a reservation
 */
public record Solid(
    int id, String name, String number, List<Face> faces, Scale scale, List<String> remarks) {

  /** Copies the lists. */
  public Solid {
    faces = List.copyOf(faces);
    remarks = List.copyOf(remarks);
  }
}
