/** Surfaces of faces, each reduced to the simplest form that it has. */
@NullMarked
package drumline.step.surface;

import org.jspecify.annotations.NullMarked;
