/** Proof by filling one position after the other, each with every set of tasks that it can hold. */
@NullMarked
package drumline.planner.stage;

import org.jspecify.annotations.NullMarked;
