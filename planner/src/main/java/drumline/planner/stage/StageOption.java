package drumline.planner.stage;

/**
 * A way of doing a task in a stage.
 *
 * @param slide number of the slide among all
 * @param mode number of the mode among all modes of all tasks
 * @param durationMs its time
 */
record StageOption(int slide, int mode, int durationMs) {}
