/** The door to the store. */
@NullMarked
package drumline.store;

import org.jspecify.annotations.NullMarked;
