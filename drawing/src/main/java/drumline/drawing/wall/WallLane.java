package drumline.drawing.wall;

/**
 * One tool slide's lane.
 *
 * @param slideId the slide
 * @param words what stands above the lane
 * @param x left side
 * @param width width
 */
record WallLane(String slideId, String words, double x, double width) {}
