/** Run-offs and what was measured in them. */
@NullMarked
package drumline.store.measure;

import org.jspecify.annotations.NullMarked;
