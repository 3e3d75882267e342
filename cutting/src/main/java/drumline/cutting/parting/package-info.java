/** Grooves, recesses and cut-off: tools fed straight into the work. */
package drumline.cutting.parting;
