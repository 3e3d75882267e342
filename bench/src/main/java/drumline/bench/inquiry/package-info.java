/** Whole inquiries: the main example, generated ones, what-if. */
@NullMarked
package drumline.bench.inquiry;

import org.jspecify.annotations.NullMarked;
