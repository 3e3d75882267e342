/** Threads: tapped, formed, chased, cut with a die head, rolled, milled. */
package drumline.cutting.threading;
