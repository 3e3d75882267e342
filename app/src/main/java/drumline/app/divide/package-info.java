/** Long operations in parts, so that they do not govern the cycle. */
package drumline.app.divide;
