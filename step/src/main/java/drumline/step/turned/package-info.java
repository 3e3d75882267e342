/** The turned piece: its axis, its outside and its bores. */
@NullMarked
package drumline.step.turned;

import org.jspecify.annotations.NullMarked;
