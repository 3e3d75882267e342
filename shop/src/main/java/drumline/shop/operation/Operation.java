package drumline.shop.operation;

import drumline.shop.machine.Equipment;
import drumline.shop.machine.SlideKind;
import drumline.shop.tooling.Tool;
import java.util.List;
import java.util.Set;

/**
 * One operation that a piece needs, before it has a place.
 *
 * @param id name, unique within the route
 * @param featureId element or feature that it makes
 * @param kind kind of operation
 * @param title as the process sheet says it, e.g. {@code rough turn Ø16.4 × 12}
 * @param end where it can be done
 * @param slides kinds of slides it can be done from
 * @param equipment what the slide and spindle need
 * @param condition what the work spindle does
 * @param tool tool that cuts
 * @param cut how it cuts
 * @param loads forces at its cutting values
 * @param removes what it takes away in the half-section; empty for features that are not turned
 * @param reason why the operation exists: the rule's words
 * @param ruleId rule that made it
 * @param sources where its figures come from
 */
public record Operation(
    String id,
    String featureId,
    OperationKind kind,
    String title,
    WorkEnd end,
    Set<SlideKind> slides,
    Set<Equipment> equipment,
    SpindleCondition condition,
    Tool tool,
    CutSpec cut,
    Loads loads,
    List<CutRegion> removes,
    String reason,
    String ruleId,
    List<String> sources) {

  /** Copies the collections. */
  public Operation {
    slides = Set.copyOf(slides);
    equipment = Set.copyOf(equipment);
    removes = List.copyOf(removes);
    sources = List.copyOf(sources);
  }

  /** The same operation with other loads. */
  public Operation withLoads(Loads newLoads) {
    return new Operation(
        id, featureId, kind, title, end, slides, equipment, condition, tool, cut, newLoads, removes,
        reason, ruleId, sources);
  }

  /** The same operation, to be done at another end. */
  public Operation withEnd(WorkEnd newEnd) {
    return new Operation(
        id, featureId, kind, title, newEnd, slides, equipment, condition, tool, cut, loads, removes,
        reason, ruleId, sources);
  }

  /** The same operation with another name and share, for dividing. */
  public Operation withCut(String newId, String newTitle, CutSpec newCut) {
    return new Operation(
        newId, featureId, kind, newTitle, end, slides, equipment, condition, tool, newCut, loads,
        removes, reason, ruleId, sources);
  }
}
