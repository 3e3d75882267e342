/** Screw threads and pipe threads of the standards: sizes, limits, and what to start them from. */
@NullMarked
package drumline.shop.thread;

import org.jspecify.annotations.NullMarked;
