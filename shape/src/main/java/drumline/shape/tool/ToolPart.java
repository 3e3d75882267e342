package drumline.shape.tool;

import drumline.shop.operation.CutRegion.PointZr;
import java.util.List;

/**
 * A part of a tool in the section plane.
 *
 * @param role what it is
 * @param outline corners in order, without repeating the first; r below 0 lies across the axis
 */
public record ToolPart(Role role, List<PointZr> outline) {

  /** Copies the list. */
  public ToolPart {
    outline = List.copyOf(outline);
  }

  /** What a part of a tool is. */
  public enum Role {
    /** Insert, blade or fluted part: it may touch what it cuts. */
    EDGE("cutting part"),
    /** Shank: it may enter only room that is free. */
    SHANK("shank"),
    /** Holder: it stays off. */
    HOLDER("holder");

    private final String words;

    Role(String words) {
      this.words = words;
    }

    /** As a setter says it. */
    public String words() {
      return words;
    }
  }

  /** The same elsewhere. */
  public ToolPart movedBy(double alongMm, double acrossMm) {
    return new ToolPart(
        role,
        outline.stream().map(p -> new PointZr(p.zMm() + alongMm, p.rMm() + acrossMm)).toList());
  }

  /** The same for work on the other end: front and collet side change places. */
  public ToolPart turnedRound() {
    return new ToolPart(role, outline.stream().map(p -> new PointZr(-p.zMm(), p.rMm())).toList());
  }

  static ToolPart box(Role role, double fromZMm, double toZMm, double fromRMm, double toRMm) {
    return new ToolPart(
        role,
        List.of(
            new PointZr(fromZMm, fromRMm),
            new PointZr(toZMm, fromRMm),
            new PointZr(toZMm, toRMm),
            new PointZr(fromZMm, toRMm)));
  }

  /** A polygon from z and r in turn. */
  static ToolPart of(Role role, double... zAndR) {
    PointZr[] corners = new PointZr[zAndR.length / 2];
    for (int i = 0; i < corners.length; i++) {
      corners[i] = new PointZr(zAndR[2 * i], zAndR[2 * i + 1]);
    }
    return new ToolPart(role, List.of(corners));
  }
}
