/** Commands for everything that is kept: backup, restore, export, import. */
package drumline.cli.keep;
