/**
 * The head of an inquiry: who asks, how many, when the plant works, what it costs, what is wished.
 */
@NullMarked
package drumline.intake.head;

import org.jspecify.annotations.NullMarked;
