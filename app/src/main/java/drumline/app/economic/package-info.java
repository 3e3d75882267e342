/** The cycle at which a piece is cheapest. */
@NullMarked
package drumline.app.economic;

import org.jspecify.annotations.NullMarked;
