/** Layouts put on the clock again: as planned, as moved, as they would be. */
@NullMarked
package drumline.app.layout;

import org.jspecify.annotations.NullMarked;
