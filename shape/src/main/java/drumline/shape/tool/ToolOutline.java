package drumline.shape.tool;

import drumline.shape.tool.ToolPart.Role;
import java.util.ArrayList;
import java.util.List;

/**
 * A tool in the section plane with its cutting point at z = 0, r = 0: cross tools come from above,
 * end tools from the front (the left).
 *
 * @param parts what it is made of, what lies behind first
 * @param side where it comes from
 * @param dimensions its dimensions as a tool list names them, ISO 13399 symbols first
 */
public record ToolOutline(List<ToolPart> parts, Side side, List<Dimension> dimensions) {

  /** Copies the lists. */
  public ToolOutline {
    parts = List.copyOf(parts);
    dimensions = List.copyOf(dimensions);
  }

  /** Where a tool comes from. */
  public enum Side {
    /** Across the axis. */
    ACROSS,
    /** Along the axis. */
    ALONG
  }

  /**
   * A dimension of the tool.
   *
   * @param symbol symbol of ISO 13399, e.g. {@code KAPR}
   * @param value in mm, or in degrees for angles
   * @param unit unit of the value
   */
  public record Dimension(String symbol, double value, Unit unit) {

    /** Units of a tool's dimensions. */
    public enum Unit {
      /** Millimetres. */
      MM,
      /** Degrees. */
      DEG
    }

    static Dimension mm(String symbol, double value) {
      return new Dimension(symbol, value, Unit.MM);
    }

    static Dimension deg(String symbol, double value) {
      return new Dimension(symbol, value, Unit.DEG);
    }
  }

  /** The same for work on the other end. */
  public ToolOutline turnedRound() {
    return new ToolOutline(parts.stream().map(ToolPart::turnedRound).toList(), side, dimensions);
  }

  /** Parts of one role. */
  public List<ToolPart> parts(Role role) {
    return parts.stream().filter(part -> part.role() == role).toList();
  }

  ToolOutline with(ToolPart part) {
    List<ToolPart> more = new ArrayList<>(parts);
    more.add(part);
    return new ToolOutline(more, side, dimensions);
  }
}
