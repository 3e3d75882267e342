/** Published line balancing instances. */
@NullMarked
package drumline.bench.line;

import org.jspecify.annotations.NullMarked;
