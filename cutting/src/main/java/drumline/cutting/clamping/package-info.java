/** What collet or chuck must hold, and what is left of its grip when it turns. */
package drumline.cutting.clamping;
