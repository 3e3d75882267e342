package drumline.workbench.door;

import io.javalin.http.HttpStatus;

/** A request that is not let in. */
public final class DoorRefusal extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final HttpStatus status;
  private final String kind;

  /**
   * A refusal.
   *
   * @param kind short name of the reason
   */
  public DoorRefusal(HttpStatus status, String kind, String detail) {
    super(detail);
    this.status = status;
    this.kind = kind;
  }

  /** Status of the answer. */
  public HttpStatus status() {
    return status;
  }

  /** Short name of the reason. */
  public String kind() {
    return kind;
  }
}
