/** Range checks of the planner's numbers. */
@NullMarked
package drumline.planner.range;

import org.jspecify.annotations.NullMarked;
