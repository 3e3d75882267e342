/** The piece as a closed surface of triangles, and as a file to look at. */
@NullMarked
package drumline.shape.mesh;

import org.jspecify.annotations.NullMarked;
