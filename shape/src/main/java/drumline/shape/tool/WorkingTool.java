package drumline.shape.tool;

import drumline.shop.operation.CutRegion.PointZr;
import drumline.shop.operation.Operation;
import java.util.List;

/**
 * An operation's tool with the way it goes, in the piece's own z and r.
 *
 * @param operation the operation
 * @param outline the tool with its cutting point at 0, 0
 * @param path way of the cutting point
 * @param overhangMm how far it stands out of its holder, 0 where it has none
 * @param longestMm how far it may stand out at most
 */
public record WorkingTool(
    Operation operation, ToolOutline outline, ToolPath path, double overhangMm, double longestMm) {

  /** The tool's parts with the cutting point at a place. */
  public List<ToolPart> at(PointZr place) {
    return outline.parts().stream().map(part -> part.movedBy(place.zMm(), place.rMm())).toList();
  }
}
