/** Answers about money. */
@NullMarked
package drumline.app.answer.money;

import org.jspecify.annotations.NullMarked;
