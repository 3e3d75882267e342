/** Work with the spindle held, turned as a C axis, or turned in ratio to the tool. */
package drumline.cutting.livetool;
