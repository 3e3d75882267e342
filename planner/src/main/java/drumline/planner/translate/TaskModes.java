package drumline.planner.translate;

import drumline.cycle.clock.OperationTime;
import drumline.cycle.spindle.SpeedWindow;
import drumline.cycle.spindle.SpindleShares;
import drumline.cycle.spindle.WorkSpindle;
import drumline.planner.model.Mode;
import drumline.planner.model.SpindleCondition;
import drumline.shop.machine.ToolSlide;
import drumline.shop.operation.Operation;
import java.util.List;

/** The ways of doing an operation at one kind of spindle, each with its time and loads. */
final class TaskModes {
  private final WorkSpindle spindle;
  private final Mode.End end;
  private final SpeedGrid grid;

  TaskModes(WorkSpindle spindle, Mode.End end, SpeedGrid grid) {
    this.spindle = spindle;
    this.end = end;
    this.grid = grid;
  }

  /**
   * Modes that the spindle and collet can bear, slowest first; empty if there is none.
   *
   * @param window speeds for a turning operation; not read for others
   */
  List<Mode> modes(Operation operation, List<ToolSlide> slides, SpeedWindow window) {
    return switch (operation.condition()) {
      case TURNING -> turning(operation, slides, window);
      case HELD -> bearable(List.of(mode(operation, slides, SpindleCondition.HELD, 0)));
      case C_AXIS -> bearable(List.of(mode(operation, slides, SpindleCondition.C_AXIS, 0)));
      case TURNING_ANY -> free(operation, slides, window);
    };
  }

  /** Speed that the loads of a driven tool are counted at beside any other tool. */
  int worstRevPerMin() {
    int fastest = grid.fastestRevPerMin();
    return fastest > 0 ? fastest : Rounding.revPerMin(spindle.highestRevPerMin());
  }

  /** At any speed if its loads are borne at the fastest, else at the speeds that it is borne at. */
  private List<Mode> free(Operation operation, List<ToolSlide> slides, SpeedWindow window) {
    List<Mode> any =
        bearable(List.of(mode(operation, slides, SpindleCondition.ANY, worstRevPerMin())));
    return any.isEmpty() ? turning(operation, slides, window) : any;
  }

  private List<Mode> turning(Operation operation, List<ToolSlide> slides, SpeedWindow window) {
    return bearable(
        grid.inside(window).stream()
            .map(n -> mode(operation, slides, SpindleCondition.TURNING, n))
            .toList());
  }

  private static List<Mode> bearable(List<Mode> modes) {
    return modes.stream().filter(mode -> !mode.isOverloaded()).toList();
  }

  /** A mode as long as on the slowest of the slides. */
  private Mode mode(
      Operation operation, List<ToolSlide> slides, SpindleCondition condition, int n) {
    double longestS =
        slides.stream()
            .mapToDouble(slide -> OperationTime.lengthS(operation, slide, n))
            .max()
            .orElseThrow();
    return new Mode(
        condition,
        n,
        Math.max(1, Rounding.ms(longestS)),
        share(SpindleShares.torqueShareRatio(operation.loads(), spindle, n)),
        share(SpindleShares.gripShareRatio(operation.loads(), spindle, n)),
        end,
        "");
  }

  /** Permille, or one more than full for anything that cannot be borne. */
  private static int share(double ratio) {
    return ratio > 1 + SpindleShares.ROUNDING_RATIO
        ? Mode.FULL_PERMILLE + 1
        : Math.min(Mode.FULL_PERMILLE, Rounding.permille(ratio));
  }
}
