/** Surfaces: feed marks, knurls, rolled and burnished seats. */
package drumline.cutting.finish;
