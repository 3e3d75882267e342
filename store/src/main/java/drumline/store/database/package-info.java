/** Opening the database and talking to it; the only place where the two kinds differ. */
@NullMarked
package drumline.store.database;

import org.jspecify.annotations.NullMarked;
