/**
 * What the pages at the top of the tree promise: sources that are cited, words that have a class.
 */
package drumline.guard.paper;
