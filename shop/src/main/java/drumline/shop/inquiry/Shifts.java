package drumline.shop.inquiry;

/**
 * When the plant works.
 *
 * @param perDayCount shifts in a day
 * @param hoursPerShiftH hours of one shift
 * @param daysPerYearCount working days in a year
 */
public record Shifts(double perDayCount, double hoursPerShiftH, double daysPerYearCount) {

  /** Planned hours in a year. */
  public double hoursPerYearH() {
    return perDayCount * hoursPerShiftH * daysPerYearCount;
  }
}
