package drumline.planner.model;

/** A choice fixed by hand; the planner works around it. */
public sealed interface Pin {
  /** The pinned task. */
  String taskId();

  /**
   * The task stands in this position.
   *
   * @param taskId the pinned task
   * @param position 1…N, N + 1 for back-working
   */
  record ToPosition(String taskId, int position) implements Pin {}

  /**
   * The task is on this slide.
   *
   * @param taskId the pinned task
   * @param slideId the slide
   */
  record ToSlide(String taskId, String slideId) implements Pin {}

  /**
   * The task runs in this mode.
   *
   * @param taskId the pinned task
   * @param modeIndex index into the task's modes
   */
  record ToMode(String taskId, int modeIndex) implements Pin {}

  /**
   * The task stands anywhere but in this position.
   *
   * @param taskId the pinned task
   * @param position 1…N, N + 1 for back-working
   */
  record NotInPosition(String taskId, int position) implements Pin {}
}
