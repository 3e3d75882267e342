/** Who may come in, and what may be shown. */
@NullMarked
package drumline.workbench.door;

import org.jspecify.annotations.NullMarked;
