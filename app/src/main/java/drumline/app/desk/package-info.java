/** The desk of the workbench: inquiries with their revisions, layouts and leaves. */
@NullMarked
package drumline.app.desk;

import org.jspecify.annotations.NullMarked;
