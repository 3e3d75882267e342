/**
 * Start values with their sources: each row says whether it was read in a source or is from memory.
 */
package drumline.cutting.tables;
