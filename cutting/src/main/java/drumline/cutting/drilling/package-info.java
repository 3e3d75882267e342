/** Holes made from the end: drilling, enlarging, counterboring, reaming. */
package drumline.cutting.drilling;
