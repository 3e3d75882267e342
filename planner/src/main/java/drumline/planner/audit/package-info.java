/** A second, independent look at a finished layout; shares no code with the search. */
@NullMarked
package drumline.planner.audit;

import org.jspecify.annotations.NullMarked;
