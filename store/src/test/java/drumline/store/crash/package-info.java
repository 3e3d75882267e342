/** A program that is killed in the middle of saving loses nothing that it said was saved. */
package drumline.store.crash;
