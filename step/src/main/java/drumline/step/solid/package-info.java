/** Units, edges, faces and solids of an exchange file. */
@NullMarked
package drumline.step.solid;

import org.jspecify.annotations.NullMarked;
