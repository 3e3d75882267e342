/**
 * The planner's question and answer in whole numbers: milliseconds, rev/min and permille of what a
 * spindle or collet can take.
 */
@NullMarked
package drumline.planner.model;

import org.jspecify.annotations.NullMarked;
