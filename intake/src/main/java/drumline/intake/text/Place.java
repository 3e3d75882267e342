package drumline.intake.text;

/**
 * Where something stands in a file.
 *
 * @param file name of the file as a reader knows it
 * @param line line, counted from 1
 * @param column column, counted from 1
 */
public record Place(String file, int line, int column) {

  /** As editors understand it: file, line and column with colons between. */
  public String toText() {
    return file + ":" + line + ":" + column;
  }
}
