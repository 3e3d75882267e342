/** A formula asked for by name: reading the values, computing, and showing the answer. */
package drumline.app.formula.face;
