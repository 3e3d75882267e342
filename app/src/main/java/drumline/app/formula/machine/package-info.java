/**
 * Formulas of the machine and what surrounds it: drives, grip, stiffness, life, money, standards.
 */
package drumline.app.formula.machine;
