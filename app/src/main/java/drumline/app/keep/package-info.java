/** Keeping what was worked out: backup, restore, plain files. */
package drumline.app.keep;
