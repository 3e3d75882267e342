/** Answers about the print, the route and the sheets. */
@NullMarked
package drumline.app.answer.sheet;

import org.jspecify.annotations.NullMarked;
