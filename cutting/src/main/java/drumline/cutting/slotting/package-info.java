/** Keyways, splines and inside polygons cut with a tool that does not turn. */
package drumline.cutting.slotting;
