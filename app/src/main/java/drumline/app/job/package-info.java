/** Planning in the background: a queue, its progress, and how it ends. */
@NullMarked
package drumline.app.job;

import org.jspecify.annotations.NullMarked;
