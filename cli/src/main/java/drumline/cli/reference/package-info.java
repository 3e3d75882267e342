/** Commands that look things up: formulas, rules, the form of files. */
package drumline.cli.reference;
