/** Meshes as files to look at. */
@NullMarked
package drumline.shape.gltf;

import org.jspecify.annotations.NullMarked;
