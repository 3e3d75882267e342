/** Sizes with their tolerances, edges, threads and counts, read from one field each. */
@NullMarked
package drumline.intake.size;

import org.jspecify.annotations.NullMarked;
