package drumline.shape.mesh;

/** A cut whose bodies touch so closely that its result would not be closed. */
final class MeshFault extends RuntimeException {
  private static final long serialVersionUID = 1;

  MeshFault(String message) {
    super(message);
  }
}
