/** What a machine's spindles change in a route. */
package drumline.route.machine;
