/** Holes on the axis: spotted, drilled, bored, reamed. */
package drumline.route.hole;
