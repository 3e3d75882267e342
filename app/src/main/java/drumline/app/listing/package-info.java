/** Results as plain text for a terminal. */
package drumline.app.listing;
