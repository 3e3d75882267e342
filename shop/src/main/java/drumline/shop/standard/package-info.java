/** Standard details of turned parts: bar, thread reliefs, centre holes, keyways. */
@NullMarked
package drumline.shop.standard;

import org.jspecify.annotations.NullMarked;
