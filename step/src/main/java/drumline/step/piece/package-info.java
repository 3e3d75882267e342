/** From an exchange file to a turned piece with all that was recognised and all that was not. */
@NullMarked
package drumline.step.piece;

import org.jspecify.annotations.NullMarked;
