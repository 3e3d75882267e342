/** What tools and spindles do from one index to the next. */
@NullMarked
package drumline.cycle.timeline;

import org.jspecify.annotations.NullMarked;
