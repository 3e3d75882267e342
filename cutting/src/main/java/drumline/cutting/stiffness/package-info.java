/** Bending of work and tools, whirling bars, and the sections they have. */
package drumline.cutting.stiffness;
