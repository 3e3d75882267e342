/** What the store keeps, as immutable records. */
@NullMarked
package drumline.store.entry;

import org.jspecify.annotations.NullMarked;
