/** What a work spindle can turn, hold and change to, and how much of it an operation takes. */
@NullMarked
package drumline.cycle.spindle;

import org.jspecify.annotations.NullMarked;
