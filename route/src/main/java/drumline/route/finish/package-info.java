/** What lies beyond a finishing cut: burnishing, and what no operation reaches. */
package drumline.route.finish;
