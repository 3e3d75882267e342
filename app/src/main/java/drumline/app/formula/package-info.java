/**
 * What a formula of the trade is for a person: its inputs with units and ranges, and its answer.
 */
package drumline.app.formula;
