/** Backups in one file, and back. */
@NullMarked
package drumline.store.backup;

import org.jspecify.annotations.NullMarked;
