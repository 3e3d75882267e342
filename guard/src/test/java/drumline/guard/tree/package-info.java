/** The project's folder and the tables of the house rules, as the rules read them. */
package drumline.guard.tree;
