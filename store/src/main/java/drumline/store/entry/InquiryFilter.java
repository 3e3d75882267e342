package drumline.store.entry;

/**
 * Which inquiries to list.
 *
 * @param words words parted by blanks, each of which must occur in the name or the text, in upper
 *     or lower case; empty for all
 * @param standing open or archived ones
 */
public record InquiryFilter(String words, Standing standing) {

  /** All open inquiries. */
  public static InquiryFilter open() {
    return new InquiryFilter("", Standing.OPEN);
  }

  /** All archived inquiries. */
  public static InquiryFilter archived() {
    return new InquiryFilter("", Standing.ARCHIVED);
  }

  /** The same standing, with words to find. */
  public InquiryFilter withWords(String newWords) {
    return new InquiryFilter(newWords, standing);
  }
}
