package drumline.shop.feature;

import drumline.shop.thread.ThreadSize;

/**
 * A screw thread on an outside step or in a bore step.
 *
 * @param id name of the feature
 * @param onElement id of the step that carries it
 * @param size the thread's standard dimensions
 * @param lengthMm full thread length, from the step's near end
 * @param method how it is to be made, or {@link Method#AUTO}
 */
public record ScrewThread(
    String id, String onElement, ThreadSize size, double lengthMm, Method method)
    implements Feature {

  /** Ways to make a thread. */
  public enum Method {
    /** The route's rules decide. */
    AUTO,
    /** Single-point, in several passes. */
    TURN,
    /** Cold-formed by rolls. */
    ROLL,
    /** Tap that cuts. */
    TAP,
    /** Tap that forms. */
    FORM_TAP
  }
}
