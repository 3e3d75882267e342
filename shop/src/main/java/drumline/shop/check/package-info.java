/** Checks of the piece before it is planned: can it be what the print says, and be reached. */
@NullMarked
package drumline.shop.check;

import org.jspecify.annotations.NullMarked;
