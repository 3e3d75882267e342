package drumline.store.contract;

import drumline.store.api.Store;
import drumline.store.api.StoreSettings;

/** Where a contract's stores come from. */
public interface Bench {

  /** An empty store of this kind that the bench closes after the test. */
  Store store();

  /** Where an empty database of this kind is that nothing has opened. */
  StoreSettings emptyPlace();
}
