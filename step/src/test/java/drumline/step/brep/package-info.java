/** Writes solids as exchange files, for tests: turned pieces, prisms, holes. */
package drumline.step.brep;
