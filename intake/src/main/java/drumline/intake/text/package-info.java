/** Text files as a tree of keys and values that knows the line of everything in it. */
@NullMarked
package drumline.intake.text;

import org.jspecify.annotations.NullMarked;
