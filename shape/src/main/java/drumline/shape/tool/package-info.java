/** Tools as outlines in the section plane, and the ways they go. */
package drumline.shape.tool;
