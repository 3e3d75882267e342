/** Tasks with known times shared among stations in a row: the plainest case of planning. */
@NullMarked
package drumline.planner.balance;

import org.jspecify.annotations.NullMarked;
