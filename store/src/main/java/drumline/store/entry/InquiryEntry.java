package drumline.store.entry;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One line in the list of inquiries.
 *
 * @param id number of the inquiry
 * @param head its present revision
 * @param created when it was created
 * @param copiedFrom the inquiry it was copied from, or null
 * @param standing open or archived
 * @param summary verdict, cycle, cost, payback, thumbnail, or null while nothing was reckoned
 */
public record InquiryEntry(
    long id,
    RevisionEntry head,
    Instant created,
    @Nullable Long copiedFrom,
    Standing standing,
    @Nullable Summary summary) {

  /** The present name. */
  public String name() {
    return head.name();
  }
}
