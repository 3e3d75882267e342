/** The command line: one class per command, files in, files out, no arithmetic. */
package drumline.cli;
