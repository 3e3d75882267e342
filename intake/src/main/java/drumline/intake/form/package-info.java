/** Forms: which keys a block may have, and how its fields are read, with every fault collected. */
@NullMarked
package drumline.intake.form;

import org.jspecify.annotations.NullMarked;
