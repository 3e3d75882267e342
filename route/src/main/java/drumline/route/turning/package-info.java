/** What is turned outside, and grooves. */
package drumline.route.turning;
