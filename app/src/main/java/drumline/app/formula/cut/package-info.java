/** Formulas of the cut: force, time and load by kind of work. */
package drumline.app.formula.cut;
