/** Planning problems: reference routes and generated ones. */
@NullMarked
package drumline.bench.route;

import org.jspecify.annotations.NullMarked;
