/** What driven tools make. */
package drumline.route.driven;
