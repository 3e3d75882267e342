/** Measures the planner on lines, routes and inquiries, and keeps a ledger of what was measured. */
@NullMarked
package drumline.bench;

import org.jspecify.annotations.NullMarked;
