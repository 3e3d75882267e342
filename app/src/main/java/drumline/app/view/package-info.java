/** Turns what was studied into the workbench's answers. */
@NullMarked
package drumline.app.view;

import org.jspecify.annotations.NullMarked;
