/** Answers about layouts. */
@NullMarked
package drumline.app.answer.layout;

import org.jspecify.annotations.NullMarked;
