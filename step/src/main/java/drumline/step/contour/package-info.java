/** Outside and bores of the turned piece as steps with their edges and grooves. */
@NullMarked
package drumline.step.contour;

import org.jspecify.annotations.NullMarked;
