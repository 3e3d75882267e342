/** Curves that bound faces or sweep surfaces. */
@NullMarked
package drumline.step.curve;

import org.jspecify.annotations.NullMarked;
