/** What a case is, how much of it is measured, and where results are kept. */
@NullMarked
package drumline.bench.measure;

import org.jspecify.annotations.NullMarked;
