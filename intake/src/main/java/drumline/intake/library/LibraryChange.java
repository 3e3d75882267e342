package drumline.intake.library;

/**
 * A figure or entry of the user's own that took the place of a shipped one; every study lists them.
 *
 * @param what entry and key, e.g. {@code material X8CrNiS18-9 price}
 * @param was what the library says, or {@code nothing}
 * @param now what is used
 * @param where file, line and column of the user's figure
 */
public record LibraryChange(String what, String was, String now, String where) {}
