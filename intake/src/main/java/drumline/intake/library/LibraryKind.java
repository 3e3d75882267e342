package drumline.intake.library;

import drumline.intake.form.Form;
import drumline.intake.form.UnitsField;
import drumline.intake.machine.DriveForm;
import drumline.intake.machine.MachineForm;
import drumline.intake.machine.PickUpForm;
import drumline.intake.machine.SlideForm;
import java.util.List;

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

  /**
   * Names of the shipped files, in the order they are read; a later one may copy from an earlier.
   */
  public List<String> files() {
    return this == MATERIALS
        ? List.of(
            "materials-steel.yaml",
            "materials-stainless.yaml",
            "materials-copper.yaml",
            "materials-aluminium.yaml",
            "materials-special.yaml")
        : List.of(key() + ".yaml");
  }

  /** All forms that a file of this kind is made of; its JSON Schema names the same keys. */
  public List<Form> forms() {
    return switch (this) {
      case MATERIALS ->
          List.of(
              form(),
              MaterialForm.FORM,
              MaterialForm.FORCE,
              WindowForm.FORM,
              WindowForm.LIFE,
              WindowScale.FORM);
      case TOOLS -> List.of(form(), ToolForm.FORM);
      case MACHINES ->
          List.of(
              form(),
              MachineForm.FORM,
              MachineForm.BAR_FEED,
              MachineForm.COST,
              DriveForm.DRIVE,
              DriveForm.WORKHOLDING,
              SlideForm.FORM,
              PickUpForm.FORM);
    };
  }

  /** Keys at the top of a file. */
  public Form form() {
    return Form.of(word + " library", UnitsField.KEY, key());
  }
}
