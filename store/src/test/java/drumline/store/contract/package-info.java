/**
 * What every store must do, whichever database it is in: one suite, run on an embedded file and on
 * a real PostgreSQL server.
 */
package drumline.store.contract;
