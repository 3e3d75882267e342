package drumline.step.surface;

/**
 * A surface, and whether its normal is that of the file's surface.
 *
 * @param surface the surface in its simplest form
 * @param isSame whether both normals agree
 */
public record Sided(Surface surface, boolean isSame) {}
