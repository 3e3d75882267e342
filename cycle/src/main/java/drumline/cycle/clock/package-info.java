/** A layout on the clock: how long each operation takes and when each can begin. */
@NullMarked
package drumline.cycle.clock;

import org.jspecify.annotations.NullMarked;
