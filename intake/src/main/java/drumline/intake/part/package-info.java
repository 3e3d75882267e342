/** The piece as the print shows it: bar, contours, features, relations. */
@NullMarked
package drumline.intake.part;

import org.jspecify.annotations.NullMarked;
