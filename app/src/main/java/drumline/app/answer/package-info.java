/** What the workbench is answered: records whose names are those of its contract. */
@NullMarked
package drumline.app.answer;

import org.jspecify.annotations.NullMarked;
