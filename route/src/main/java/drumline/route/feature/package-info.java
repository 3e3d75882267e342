/** What all makers of operations share. */
package drumline.route.feature;
