/** The shelves in SQL. */
@NullMarked
package drumline.store.sql;

import org.jspecify.annotations.NullMarked;
