/** Inquiries and layouts as they are kept, read and laid out again. */
@NullMarked
package drumline.app.shelf;

import org.jspecify.annotations.NullMarked;
