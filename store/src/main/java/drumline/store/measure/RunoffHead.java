package drumline.store.measure;

/**
 * What was run.
 *
 * @param inquiryId the inquiry
 * @param revision its revision
 * @param machine name or number of the machine
 * @param title what the record is called
 */
public record RunoffHead(long inquiryId, int revision, String machine, String title) {}
