package drumline.cutting.life;

import drumline.cutting.validity.Require;
import java.util.List;

/**
 * Time that changing tools costs each piece.
 *
 * <p>One tool: d = tc·t/T (s), tc and T in min, t in s. A group changed at one stop: d =
 * 60·tstop/N, N the whole pieces of its shortest life.
 *
 * <p>Source: [BASIS] sections 4 and 7; the single law is that of [GRO-DOWN].
 *
 * @param cutS time t in cut for each piece, above 0
 * @param lifeMin tool life T, above 0
 * @param changeMin time tc of the change, 0 or more
 */
public record ToolChangeLoss(double cutS, double lifeMin, double changeMin) {
  /** How a stop with several changes is worked off. */
  public enum Crew {
    /** One setter: the changes add up. */
    ONE_AFTER_THE_OTHER,
    /** A hand for each tool: the longest change counts. */
    ALL_AT_ONCE
  }

  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public ToolChangeLoss {
    Require.positive("cutS", cutS);
    Require.positive("lifeMin", lifeMin);
    Require.notNegative("changeMin", changeMin);
  }

  /** Loss when the tool is changed at its own end of life. */
  public double perPieceS() {
    return changeMin * cutS / lifeMin;
  }

  /**
   * Loss of several tools, each changed at its own end of life.
   *
   * @param tools the tools
   */
  public static double separateS(List<ToolChangeLoss> tools) {
    return tools.stream().mapToDouble(ToolChangeLoss::perPieceS).sum();
  }

  /**
   * Loss of several tools that are all changed when the first is due.
   *
   * @param tools the group, at least one
   * @param crew how the stop is worked off
   * @param restartMin time to stop, restart and check the first piece, 0 or more, once for each
   *     stop
   * @throws IllegalArgumentException if there is no tool, the restart is negative, or the shortest
   *     life makes no whole piece
   */
  public static double groupedS(List<ToolChangeLoss> tools, Crew crew, double restartMin) {
    Require.notNegative("restartMin", restartMin);
    Require.atLeast("number of tools", tools.size(), 1);
    long pieces =
        tools.stream()
            .mapToLong(t -> PiecesPerEdge.wholeCount(t.lifeMin(), t.cutS()))
            .min()
            .orElseThrow();
    Require.positive("whole pieces of the shortest life", (double) pieces);
    double stopMin =
        crew == Crew.ALL_AT_ONCE
            ? tools.stream().mapToDouble(ToolChangeLoss::changeMin).max().orElseThrow()
            : tools.stream().mapToDouble(ToolChangeLoss::changeMin).sum();
    return 60 * (stopMin + restartMin) / pieces;
  }
}
