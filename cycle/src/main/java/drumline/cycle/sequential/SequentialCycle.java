package drumline.cycle.sequential;

import java.util.List;

/**
 * A piece's time on a machine that uses one tool after another at each of its spindles.
 *
 * @param main steps of the main spindle, in order and without gaps
 * @param second steps of the second spindle, from gripping to its return, in order and without
 *     gaps; empty where there is none
 * @param cycleS time from piece to piece: the longer of both spindles', which work on two pieces at
 *     the same time and meet while the piece is gripped and parted
 * @param allInSequenceS time if nothing at all ran at the same time
 */
public record SequentialCycle(
    List<Step> main, List<Step> second, double cycleS, double allInSequenceS) {

  /** Copies the lists. */
  public SequentialCycle {
    main = List.copyOf(main);
    second = List.copyOf(second);
  }

  /** Time of the main spindle's steps in seconds. */
  public double mainS() {
    return lengthS(main);
  }

  /** Time of the second spindle's steps in seconds, 0 where there is none. */
  public double secondS() {
    return lengthS(second);
  }

  private static double lengthS(List<Step> steps) {
    return steps.isEmpty() ? 0 : steps.get(steps.size() - 1).endS();
  }
}
