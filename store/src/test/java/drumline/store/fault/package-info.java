/** What a person reads when the store cannot be opened or used. */
package drumline.store.fault;
