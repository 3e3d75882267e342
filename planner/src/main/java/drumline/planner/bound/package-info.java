/** How short a cycle can be at best, without looking for a layout. */
@NullMarked
package drumline.planner.bound;

import org.jspecify.annotations.NullMarked;
