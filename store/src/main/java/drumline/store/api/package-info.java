/** The store as the rest of the program sees it. */
@NullMarked
package drumline.store.api;

import org.jspecify.annotations.NullMarked;
