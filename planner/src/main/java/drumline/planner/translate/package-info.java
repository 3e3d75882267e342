/**
 * Between the shop's nouns and the planner's whole numbers. Times are rounded up to whole
 * milliseconds, shares of loads up to whole permille, speeds down to whole rev/min: so a layout
 * that keeps the planner's rules keeps the shop's, and its timeline is never longer than planned.
 */
@NullMarked
package drumline.planner.translate;

import org.jspecify.annotations.NullMarked;
