package drumline.shop.thread;

import java.util.List;
import java.util.Optional;

/** The threads of one standard. */
interface ThreadFamily {

  /** The thread of that name, if the standard has it; the hand is taken off already. */
  Optional<ThreadSize> find(String designation);

  /** Names of all its threads, smallest first. */
  List<String> designations();
}
