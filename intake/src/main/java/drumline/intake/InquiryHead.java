package drumline.intake;

import drumline.intake.form.Block;
import drumline.intake.form.Form;
import drumline.intake.head.RatesForm;
import drumline.intake.head.Title;
import drumline.intake.head.VolumesForm;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.inquiry.Overrides;
import drumline.shop.inquiry.Rates;
import drumline.shop.inquiry.Shifts;
import drumline.shop.inquiry.Today;
import drumline.shop.inquiry.Volumes;
import drumline.shop.inquiry.Wishes;
import drumline.shop.machine.Machine;
import drumline.shop.material.Material;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import drumline.shop.quantity.UnitSystem;
import drumline.shop.tooling.ToolFamily;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What an inquiry says beside the piece and its material.
 *
 * @param title who asks for what
 * @param volumes how many
 * @param shifts when the plant works
 * @param rates the plant's rates
 * @param today how the piece is made now, or null
 */
record InquiryHead(
    Title title, Volumes volumes, Shifts shifts, Rates rates, @Nullable Today today) {

  /** Reads the blocks; empty where one that must be there is absent. */
  static Optional<InquiryHead> read(Block top) {
    Optional<Title> title = require(top, "inquiry", Title.FORM).map(Title::read);
    Optional<Volumes> volumes = require(top, "volumes", VolumesForm.FORM).map(VolumesForm::read);
    Optional<Shifts> shifts =
        require(top, "shifts", VolumesForm.SHIFTS).map(VolumesForm::readShifts);
    Optional<Rates> rates = require(top, "rates", RatesForm.FORM).map(RatesForm::read);
    @Nullable Today today =
        top.block("today", RatesForm.TODAY).map(RatesForm::readToday).orElse(null);
    if (title.isEmpty() || volumes.isEmpty() || shifts.isEmpty() || rates.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new InquiryHead(title.get(), volumes.get(), shifts.get(), rates.get(), today));
  }

  private static Optional<Block> require(Block block, String key, Form form) {
    return block.require(key).flatMap(field -> field.block(form));
  }

  /** The inquiry, with the rest. */
  Inquiry inquiry(
      UnitSystem units,
      Part part,
      Bar bar,
      Material material,
      Wishes wishes,
      List<ToolFamily> tools,
      List<Machine> machines) {
    return new Inquiry(
        title.title(),
        title.customer(),
        title.number(),
        units,
        part,
        bar,
        material,
        volumes,
        shifts,
        today,
        rates,
        wishes,
        Overrides.NONE,
        tools,
        machines);
  }
}
