/** Libraries of materials, tools and machines: shipped ones, the user's own, and single changes. */
@NullMarked
package drumline.intake.library;

import org.jspecify.annotations.NullMarked;
