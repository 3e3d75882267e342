/** Exchange files of ISO 10303-21: their text, their instances, what is broken in them. */
@NullMarked
package drumline.step.exchange;

import org.jspecify.annotations.NullMarked;
