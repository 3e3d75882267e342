/** Tools set out at their positions, and what they meet and cut there. */
package drumline.app.setting;
