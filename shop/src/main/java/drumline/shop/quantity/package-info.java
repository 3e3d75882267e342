/**
 * Quantities with their units: reading what people write, holding it in one internal unit, and
 * writing it back in metric or inch units.
 */
@NullMarked
package drumline.shop.quantity;

import org.jspecify.annotations.NullMarked;
