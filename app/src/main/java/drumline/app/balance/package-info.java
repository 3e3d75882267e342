/** Plain balancing of known times. */
package drumline.app.balance;
