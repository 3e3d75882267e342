/** What is not turned: holes, flats, slots, inside forms. */
@NullMarked
package drumline.step.feature;

import org.jspecify.annotations.NullMarked;
