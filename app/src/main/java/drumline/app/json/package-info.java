/** The documented contract of a planned inquiry. */
package drumline.app.json;
