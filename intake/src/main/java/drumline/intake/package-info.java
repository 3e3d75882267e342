/** Reads an inquiry and the libraries it refers to, and says everything that is wrong at once. */
@NullMarked
package drumline.intake;

import org.jspecify.annotations.NullMarked;
