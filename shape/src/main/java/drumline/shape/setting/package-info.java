/** Tools and what holds the work, as they stand at one position at their times. */
package drumline.shape.setting;
