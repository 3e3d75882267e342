package drumline.shape.setting;

import drumline.shape.tool.ToolOutline.Side;
import drumline.shape.tool.ToolPart;
import drumline.shape.tool.ToolPlacing;
import drumline.shape.tool.WorkingTool;
import drumline.shop.machine.ToolSlide;
import drumline.shop.operation.CutRegion.PointZr;
import drumline.shop.operation.Operation;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import java.util.ArrayList;
import java.util.List;

/**
 * The tools of one position.
 *
 * @param position 1 for the first; one more than the last for the pick-up spindle
 * @param tools tools in the order of their starts
 */
public record PositionTools(int position, List<SetTool> tools) {

  private static final double CLEAR_MM = 2;

  /** Copies the list. */
  public PositionTools {
    tools = List.copyOf(tools);
  }

  /**
   * An operation on a slide at its times.
   *
   * @param operation the operation
   * @param slide the slide
   * @param times when it moves
   */
  public record Job(Operation operation, ToolSlide slide, ToolTimes times) {}

  /**
   * Sets tools out: as short as the cut asks for, but longer where the holder of a tool facing the
   * work would reach under a cross tool that is at work at the same time.
   *
   * @param jobs what is done here, in the order of their starts
   */
  public static PositionTools of(int position, List<Job> jobs, Part part, Bar bar) {
    List<SetTool> shortest = new ArrayList<>();
    for (int i = 0; i < jobs.size(); i++) {
      shortest.add(set(position, i, jobs.get(i), part, bar, 0));
    }
    List<SetTool> tools = new ArrayList<>();
    for (int i = 0; i < jobs.size(); i++) {
      double wantedMm = wantedMm(shortest.get(i), shortest);
      tools.add(
          wantedMm > shortest.get(i).tool().overhangMm()
              ? set(position, i, jobs.get(i), part, bar, wantedMm)
              : shortest.get(i));
    }
    return new PositionTools(position, tools);
  }

  private static SetTool set(
      int position, int index, Job job, Part part, Bar bar, double wantedMm) {
    WorkingTool tool = ToolPlacing.of(job.operation(), job.slide().kind(), part, bar, wantedMm);
    return new SetTool(position + "." + (index + 1), job.slide(), tool, job.times());
  }

  private static double wantedMm(SetTool one, List<SetTool> all) {
    double wantedMm = 0;
    if (one.tool().outline().side() == Side.ALONG) {
      for (SetTool other : all) {
        if (other.tool().outline().side() == Side.ACROSS
            && !other.slide().id().equals(one.slide().id())
            && one.times().overlaps(other.times())) {
          wantedMm = Math.max(wantedMm, overhangPastMm(one.tool(), other.tool()));
        }
      }
    }
    return Math.ceil(wantedMm);
  }

  /**
   * Overhang in mm with which the holder of a tool facing the front stays before a cross tool:
   * deepest place of the tip less the frontmost place of those parts of the cross tool that reach
   * in as far as the holder's radius, and a little room; 0 where none does.
   */
  public static double overhangPastMm(WorkingTool facing, WorkingTool cross) {
    double tipMm = facing.path().cut().stream().mapToDouble(PointZr::zMm).max().orElse(0);
    double reachMm = reachMm(facing);
    double frontMm = Double.POSITIVE_INFINITY;
    for (PointZr place : cross.path().cut()) {
      for (ToolPart part : cross.at(place)) {
        if (part.outline().stream().anyMatch(corner -> corner.rMm() < reachMm + CLEAR_MM)) {
          double fromMm = part.outline().stream().mapToDouble(PointZr::zMm).min().orElse(0);
          frontMm = Math.min(frontMm, fromMm);
        }
      }
    }
    return Double.isFinite(frontMm) ? Math.max(0, tipMm - frontMm + CLEAR_MM) : 0;
  }

  /** Greatest distance in mm of a facing tool's holder from the axis on its way. */
  private static double reachMm(WorkingTool facing) {
    double offMm = facing.path().cut().stream().mapToDouble(PointZr::rMm).max().orElse(0);
    return offMm
        + facing.outline().parts(ToolPart.Role.HOLDER).stream()
            .flatMap(part -> part.outline().stream())
            .mapToDouble(PointZr::rMm)
            .max()
            .orElse(0);
  }
}
