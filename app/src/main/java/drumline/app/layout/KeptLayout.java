package drumline.app.layout;

import drumline.shop.layout.Layout;
import java.util.List;
import java.util.Map;

/**
 * A layout as it is kept: enough to lay it out again on the same inquiry.
 *
 * @param origin where it comes from
 * @param layout places and speeds
 * @param parts operations that were divided, with the number of their parts
 * @param inquiryText the inquiry it was made for, to the letter
 * @param lowerBoundS no layout of this route can have a shorter cycle
 * @param isProvenOptimal whether it was proven the best
 * @param wallMs how long the search took
 * @param notes what a person should know about the search
 */
public record KeptLayout(
    Origin origin,
    Layout layout,
    Map<String, Integer> parts,
    String inquiryText,
    double lowerBoundS,
    boolean isProvenOptimal,
    long wallMs,
    List<String> notes) {

  /** Copies the collections. */
  public KeptLayout {
    parts = Map.copyOf(parts);
    notes = List.copyOf(notes);
  }

  /** Where a layout comes from. */
  public enum Origin {
    /** The planner found it. */
    PLANNED,
    /** A person moved operations of another one. */
    MOVED
  }

  /** The same operations after a person moved some; it is no longer proven the best. */
  public KeptLayout withMoved(Layout moved) {
    return new KeptLayout(
        Origin.MOVED, moved, parts, inquiryText, lowerBoundS, false, wallMs, notes);
  }
}
