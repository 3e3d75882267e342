/**
 * House rules over what stands in files. Each is a function from a file to the list of breaches, so
 * that a test can show that it bites; lists of words and units are resource files.
 */
package drumline.guard.source;
