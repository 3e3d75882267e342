/**
 * A second, independent look at a finished timeline, in seconds and in the shop's own nouns: every
 * rule is worked out again from route and machine; nothing is shared with the planner's search or
 * with the clock that made the timeline.
 */
@NullMarked
package drumline.planner.check;

import org.jspecify.annotations.NullMarked;
