/** Milling with live tools: chip thickness, load, time, cusps. */
package drumline.cutting.milling;
