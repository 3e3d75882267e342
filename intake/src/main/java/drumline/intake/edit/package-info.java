/** Changes single values of a text and leaves everything else as its writer left it. */
@NullMarked
package drumline.intake.edit;

import org.jspecify.annotations.NullMarked;
