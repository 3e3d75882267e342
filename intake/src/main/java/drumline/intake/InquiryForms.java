package drumline.intake;

import drumline.intake.form.Form;
import drumline.intake.head.PracticeForm;
import drumline.intake.head.RatesForm;
import drumline.intake.head.Title;
import drumline.intake.head.VolumesForm;
import drumline.intake.head.WishesForm;
import drumline.intake.part.BarForm;
import drumline.intake.part.FeatureForm;
import drumline.intake.part.PartForm;
import java.util.ArrayList;
import java.util.List;

/** All forms that an inquiry is made of; its JSON Schema names the same keys. */
public final class InquiryForms {

  /** Keys at the top of an inquiry. */
  public static final Form INQUIRY =
      Form.of(
          "inquiry file",
          "inquiry",
          "units",
          "volumes",
          "shifts",
          "today",
          "rates",
          "material",
          "bar",
          "part",
          "wishes",
          "libraries",
          "overrides");

  static final Form LIBRARIES = Form.of("libraries", "materials", "tools", "machines", "practice");

  static final Form OVERRIDES =
      Form.of("overrides", "materials", "tools", "machines", "rules", "allowances", "capability");

  private InquiryForms() {}

  /** Every form, the top one first. */
  public static List<Form> all() {
    List<Form> forms =
        new ArrayList<>(
            List.of(
                INQUIRY,
                LIBRARIES,
                OVERRIDES,
                PracticeForm.RULE,
                PracticeForm.REACHED,
                Title.FORM,
                VolumesForm.FORM,
                VolumesForm.SHIFTS,
                RatesForm.FORM,
                RatesForm.TODAY,
                WishesForm.FORM,
                WishesForm.ORDER,
                WishesForm.PIN,
                BarForm.FORM));
    forms.addAll(PartForm.forms());
    forms.addAll(FeatureForm.forms());
    return forms;
  }
}
