/** Everything the store keeps as plain files in folders, and back. */
@NullMarked
package drumline.store.files;

import org.jspecify.annotations.NullMarked;
