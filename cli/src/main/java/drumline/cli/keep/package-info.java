/** Commands that save everything somewhere else and bring it back. */
package drumline.cli.keep;
