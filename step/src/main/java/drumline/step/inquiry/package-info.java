/** The inquiry that is written for the user to edit. */
@NullMarked
package drumline.step.inquiry;

import org.jspecify.annotations.NullMarked;
