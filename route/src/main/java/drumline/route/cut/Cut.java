package drumline.route.cut;

import drumline.shop.operation.CutSpec;
import drumline.shop.operation.Loads;

/**
 * How an operation cuts and what forces that brings.
 *
 * @param spec time and cutting values
 * @param loads forces
 */
public record Cut(CutSpec spec, Loads loads) {}
