/** The planner's entry: a problem in, a layout with its bound and audit out. */
@NullMarked
package drumline.planner.api;

import org.jspecify.annotations.NullMarked;
