/** Refusing impossible arguments, and reporting results that lie outside a formula's range. */
package drumline.cutting.validity;
