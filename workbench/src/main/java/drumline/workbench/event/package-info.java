/** What happens, sent to pages as it happens. */
@NullMarked
package drumline.workbench.event;

import org.jspecify.annotations.NullMarked;
