package drumline.app.answer;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Something that the desk does not do; nothing was changed. */
public final class DeskRefusal extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final Kind kind;
  private final transient List<PlacedProblem> problems;
  private final transient @Nullable Present present;

  /** Why. */
  public enum Kind {
    /** There is no such thing. */
    MISSING,
    /** Somebody changed it since. */
    STALE,
    /** What was asked cannot be done. */
    REFUSED,
    /** Too much of it at once. */
    BUSY,
    /** The program cannot do it yet. */
    NOT_YET
  }

  /**
   * What stands now, for somebody who worked on an older revision.
   *
   * @param revision the present revision
   * @param by who made it
   * @param at when, ISO 8601 in UTC
   */
  public record Present(int revision, String by, String at) {}

  private DeskRefusal(
      Kind kind, String detail, List<PlacedProblem> problems, @Nullable Present present) {
    super(detail);
    this.kind = kind;
    this.problems = List.copyOf(problems);
    this.present = present;
  }

  /** A refusal in a sentence. */
  public static DeskRefusal of(Kind kind, String detail) {
    return new DeskRefusal(kind, detail, List.of(), null);
  }

  /** A refusal because of problems of the text. */
  public static DeskRefusal of(String detail, List<PlacedProblem> problems) {
    return new DeskRefusal(Kind.REFUSED, detail, problems, null);
  }

  /** A refusal because somebody changed it since. */
  public static DeskRefusal stale(int expectedRevision, Present present) {
    String detail =
        "expected revision "
            + expectedRevision
            + ", it is "
            + present.revision()
            + " by "
            + present.by();
    return new DeskRefusal(Kind.STALE, detail, List.of(), present);
  }

  /** Why. */
  public Kind kind() {
    return kind;
  }

  /** Problems behind it; may be empty. */
  public List<PlacedProblem> problems() {
    return problems;
  }

  /** What stands now, if somebody changed it since. */
  public @Nullable Present present() {
    return present;
  }
}
