/** Whether tools meet the work, what holds it, or one another. */
package drumline.shape.clearance;
