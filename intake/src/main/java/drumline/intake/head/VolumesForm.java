package drumline.intake.head;

import drumline.intake.form.Block;
import drumline.intake.form.Field;
import drumline.intake.form.Form;
import drumline.intake.form.Plain;
import drumline.intake.form.Range;
import drumline.shop.inquiry.Shifts;
import drumline.shop.inquiry.Volumes;
import drumline.shop.quantity.QuantityKind;
import java.util.Optional;

/** Reads how many pieces are wanted and when the plant works. */
public final class VolumesForm {

  /** Keys of the volumes. */
  public static final Form FORM = Form.of("volumes", "per-year", "per-lot", "years");

  /** Keys of the shifts. */
  public static final Form SHIFTS = Form.of("shifts", "per-day", "hours", "days-per-year");

  private static final Range PIECES = Range.between(1, 1e12);
  private static final double HOUR_S = 3600;

  private VolumesForm() {}

  /** Reads the volumes. */
  public static Volumes read(Block block) {
    double perYear = whole(block.require("per-year"), Double.NaN);
    double perLot = whole(block.find("per-lot"), perYear);
    double years = block.find("years").map(f -> f.number(Range.above0To(100))).orElse(1.0);
    return new Volumes(Math.round(perYear), Math.round(perLot), years);
  }

  private static double whole(Optional<Field> field, double otherwise) {
    double value = field.map(f -> f.number(PIECES)).orElse(otherwise);
    if (value != Math.rint(value) && field.isPresent() && !Double.isNaN(value)) {
      field.get().report("not-whole", field.get().node().words(), "whole pieces", "");
    }
    return value;
  }

  /** Reads the shifts. */
  public static Shifts readShifts(Block block) {
    double perDay = block.number("per-day", Range.above0To(10));
    double hours = block.quantity("hours", QuantityKind.TIME, Range.above0To(24 * HOUR_S)) / HOUR_S;
    double days = block.number("days-per-year", Range.above0To(366));
    if (perDay * hours > 24) {
      block.report(
          "day-too-long",
          Plain.number(perDay) + " shifts of " + Plain.number(hours) + " h",
          "at most 24 hours of work in a day",
          "");
    }
    return new Shifts(perDay, hours, days);
  }
}
