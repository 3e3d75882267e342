/** Tasks with known times as text, in two open forms. */
@NullMarked
package drumline.planner.balance.text;

import org.jspecify.annotations.NullMarked;
