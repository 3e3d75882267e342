/** One class for each part of the contract in openapi.yaml. */
@NullMarked
package drumline.workbench.route;

import org.jspecify.annotations.NullMarked;
