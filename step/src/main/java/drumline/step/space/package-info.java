/** Points, directions and placements in space. */
@NullMarked
package drumline.step.space;

import org.jspecify.annotations.NullMarked;
