/** An inquiry studied on a machine: everything from the print to the piece cost. */
package drumline.app.study;
