package drumline.app.answer.layout;

import drumline.app.answer.Head;
import drumline.app.answer.PlacedProblem;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A layout on the clock.
 *
 * @param id the inquiry
 * @param revision revision of the inquiry that it belongs to
 * @param layoutId stored layout, or null
 * @param state none, planned, moved, outdated or what-if
 * @param machine the machine, or null
 * @param cycle the cycle, or null
 * @param head figures of the head line
 * @param columns positions in the order of travel
 * @param unplaced operations without a place
 * @param findings every rule
 * @param pins what the user fixed
 * @param equipment options that it asks of the machine
 * @param notes notes of the planner
 * @param problems what is wrong or worth knowing
 * @param planningJobId job that plans it now, or null
 */
public record LayoutAnswer(
    String id,
    int revision,
    @Nullable String layoutId,
    String state,
    @Nullable MachineHead machine,
    @Nullable CycleHead cycle,
    Head head,
    List<Column> columns,
    List<Unplaced> unplaced,
    List<FindingAnswer> findings,
    List<PinAnswer> pins,
    List<Option> equipment,
    List<String> notes,
    List<PlacedProblem> problems,
    @Nullable String planningJobId) {
  /** Copies the lists. */
  public LayoutAnswer {
    columns = List.copyOf(columns);
    unplaced = List.copyOf(unplaced);
    findings = List.copyOf(findings);
    pins = List.copyOf(pins);
    equipment = List.copyOf(equipment);
    notes = List.copyOf(notes);
    problems = List.copyOf(problems);
  }

  /**
   * The machine of a layout.
   *
   * @param name its name
   * @param title as a reader knows it
   * @param positionCount positions
   * @param hasPickUp whether it has a pick-up spindle
   */
  public record MachineHead(String name, String title, int positionCount, boolean hasPickUp) {}

  /**
   * The cycle of a layout.
   *
   * @param cycleS time from index to index
   * @param workS time until the drum may index
   * @param indexS index time
   * @param governingPosition position that sets the cycle
   * @param governingWords the same in words
   * @param lowerBoundS bound, or null where the text was changed since
   * @param gapPct share of the cycle above the bound, or null
   * @param isProvenOptimal whether it was proven the best
   * @param piecesPerIndexCount pieces at each index
   * @param planningWallMs how long the search took
   */
  public record CycleHead(
      double cycleS,
      double workS,
      double indexS,
      int governingPosition,
      String governingWords,
      @Nullable Double lowerBoundS,
      @Nullable Double gapPct,
      boolean isProvenOptimal,
      int piecesPerIndexCount,
      long planningWallMs) {}

  /**
   * An operation without a place.
   *
   * @param operationId the operation
   * @param featureId feature that it makes
   * @param kind kind of operation
   * @param title as a process sheet says it
   */
  public record Unplaced(String operationId, String featureId, String kind, String title) {}

  /**
   * Equipment that must be bought with the machine.
   *
   * @param words what and where
   * @param price its price
   * @param currency ISO 4217 code
   */
  public record Option(String words, BigDecimal price, String currency) {}
}
