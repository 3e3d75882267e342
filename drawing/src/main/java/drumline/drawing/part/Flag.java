package drumline.drawing.part;

/**
 * A dimension on a stem above the piece.
 *
 * @param element id of the step or feature it belongs to
 * @param text what it says
 * @param zMm where its arrow meets the surface
 * @param rMm radius there
 */
record Flag(String element, String text, double zMm, double rMm) {}
