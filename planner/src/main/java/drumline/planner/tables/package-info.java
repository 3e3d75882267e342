/** The planning problem as arrays, for the parts of the planner that count millions of times. */
@NullMarked
package drumline.planner.tables;

import org.jspecify.annotations.NullMarked;
