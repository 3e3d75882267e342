package drumline.intake.library;

import drumline.intake.form.Form;
import drumline.intake.form.UnitsField;

/** Kinds of library. */
public enum LibraryKind {
  /** What bars are made of. */
  MATERIALS("material"),
  /** Tool families. */
  TOOLS("tool"),
  /** Machines. */
  MACHINES("machine");

  private final String word;

  LibraryKind(String word) {
    this.word = word;
  }

  /** One entry, in a word. */
  public String word() {
    return word;
  }

  /** Key of the list of entries. */
  public String key() {
    return word + "s";
  }

  /** Keys at the top of a file. */
  public Form form() {
    return Form.of(word + " library", UnitsField.KEY, key());
  }
}
