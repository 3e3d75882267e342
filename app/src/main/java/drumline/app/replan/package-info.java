/** Plans a route again with something changed, to see what the change is worth. */
@NullMarked
package drumline.app.replan;

import org.jspecify.annotations.NullMarked;
