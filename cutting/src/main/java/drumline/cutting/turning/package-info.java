/** Turning, boring, facing and form cutting: time and load. */
package drumline.cutting.turning;
