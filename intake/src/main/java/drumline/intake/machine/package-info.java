/** Machines of a library: drives, slides, pick-up, bar feed and cost. */
@NullMarked
package drumline.intake.machine;

import org.jspecify.annotations.NullMarked;
