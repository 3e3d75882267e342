/** The page in a real browser. */
package drumline.workbench.page;
