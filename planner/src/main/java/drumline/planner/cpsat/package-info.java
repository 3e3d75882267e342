/** The layout as a constraint model; the only package that sees the solver library. */
@NullMarked
package drumline.planner.cpsat;

import org.jspecify.annotations.NullMarked;
