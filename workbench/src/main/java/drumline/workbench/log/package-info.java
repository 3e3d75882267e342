/** What the server did: log lines and counters. */
@NullMarked
package drumline.workbench.log;

import org.jspecify.annotations.NullMarked;
