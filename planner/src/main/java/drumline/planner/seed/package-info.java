/** A first layout in a moment, and a local search that improves it. */
@NullMarked
package drumline.planner.seed;

import org.jspecify.annotations.NullMarked;
