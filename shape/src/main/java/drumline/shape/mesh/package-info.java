/** The piece as a closed surface of triangles. */
@NullMarked
package drumline.shape.mesh;

import org.jspecify.annotations.NullMarked;
