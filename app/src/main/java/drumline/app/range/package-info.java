/** How far cycle and cost may be off with the cutting figures. */
package drumline.app.range;
