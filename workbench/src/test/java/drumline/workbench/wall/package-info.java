/** The cycle wall and its other views in a real browser. */
package drumline.workbench.wall;
