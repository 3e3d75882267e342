/** Tool layout: each position with its tools in place, and the drum from the front. */
package drumline.drawing.tooling;
