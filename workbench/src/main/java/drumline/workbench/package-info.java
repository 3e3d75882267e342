/** The workbench's server. */
@NullMarked
package drumline.workbench;

import org.jspecify.annotations.NullMarked;
