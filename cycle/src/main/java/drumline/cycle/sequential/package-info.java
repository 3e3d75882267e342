/** The same operations on machines without a drum, one tool after another. */
@NullMarked
package drumline.cycle.sequential;

import org.jspecify.annotations.NullMarked;
