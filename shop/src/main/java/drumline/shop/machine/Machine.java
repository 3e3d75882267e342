package drumline.shop.machine;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A machine as its data sheet describes it; never a real maker's, a generic one of our own.
 *
 * @param name short name it is asked for by
 * @param title what a reader sees
 * @param kind build of machine
 * @param positions positions in the order a piece meets them; one for machines without a drum
 * @param drive work spindles
 * @param workholding collets
 * @param pickUp pick-up spindles, or null
 * @param barFeed bars
 * @param indexS time from the last tool clear to the next tools released; for a turret the time to
 *     turn to the next tool
 * @param maxPieceLengthMm longest piece
 * @param cost money
 * @param source where the figures come from
 * @param indexing whether one piece or two come at each index, and how long two positions take
 */
public record Machine(
    String name,
    String title,
    Kind kind,
    List<Position> positions,
    SpindleDrive drive,
    Workholding workholding,
    @Nullable PickUp pickUp,
    BarFeed barFeed,
    double indexS,
    double maxPieceLengthMm,
    MachineCost cost,
    String source,
    Indexing indexing) {

  /** A machine with single indexing only. */
  public Machine(
      String name,
      String title,
      Kind kind,
      List<Position> positions,
      SpindleDrive drive,
      Workholding workholding,
      @Nullable PickUp pickUp,
      BarFeed barFeed,
      double indexS,
      double maxPieceLengthMm,
      MachineCost cost,
      String source) {
    this(
        name,
        title,
        kind,
        positions,
        drive,
        workholding,
        pickUp,
        barFeed,
        indexS,
        maxPieceLengthMm,
        cost,
        source,
        Indexing.single());
  }

  /** The same machine with other pick-up spindles. */
  public Machine withPickUp(PickUp newPickUp) {
    return new Machine(
        name,
        title,
        kind,
        positions,
        drive,
        workholding,
        newPickUp,
        barFeed,
        indexS,
        maxPieceLengthMm,
        cost,
        source,
        indexing);
  }

  /** The same machine with other slides. */
  public Machine withPositions(List<Position> newPositions) {
    return new Machine(
        name,
        title,
        kind,
        newPositions,
        drive,
        workholding,
        pickUp,
        barFeed,
        indexS,
        maxPieceLengthMm,
        cost,
        source,
        indexing);
  }

  /** Copies the list. */
  public Machine {
    positions = List.copyOf(positions);
  }

  /** Builds of machine. */
  public enum Kind {
    /** Spindle drum: every position works at the same time. */
    DRUM,
    /** Turning centre with a main and a second spindle and turrets. */
    TWIN_SPINDLE,
    /** Lathe with a guide bush and a sliding headstock. */
    SLIDING_HEAD,
    /** Rotary transfer machine: blanks go from station to station, tools turn. */
    ROTARY_TRANSFER
  }

  /** All slides around the drum, in the order of the positions. */
  public Stream<ToolSlide> drumSlides() {
    return positions.stream().flatMap(position -> position.slides().stream());
  }

  /** The slide with this id, at the drum or at the pick-up spindle, if there is one. */
  public Optional<ToolSlide> findSlide(String id) {
    Stream<ToolSlide> back = pickUp == null ? Stream.empty() : pickUp.slides().stream();
    return Stream.concat(drumSlides(), back).filter(slide -> slide.id().equals(id)).findFirst();
  }

  /** Number of the last position, where pieces are cut off. */
  public int lastPosition() {
    return positions.size();
  }
}
