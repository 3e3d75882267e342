/** Size tolerances: ISO 286 codes, deviations, limits and general tolerances, as mm deviations. */
@NullMarked
package drumline.shop.tolerance;

import org.jspecify.annotations.NullMarked;
