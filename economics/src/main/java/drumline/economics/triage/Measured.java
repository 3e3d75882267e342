package drumline.economics.triage;

import drumline.shop.machine.Equipment;
import drumline.shop.machine.Machine;

/**
 * A figure of the piece, and where a machine sets the limits, those.
 *
 * @param valueRatio the figure, in the rule's unit
 * @param detail what it belongs to, e.g. an element's id, or empty
 * @param fitsRatio the machine's limit as it is fitted
 * @param lookRatio the machine's limit with all its options
 */
record Measured(double valueRatio, String detail, double fitsRatio, double lookRatio) {

  /** A figure whose limits the rule knows. */
  static Measured figure(double valueRatio, String detail) {
    return new Measured(valueRatio, detail, Double.NaN, Double.NaN);
  }

  /** A figure against one limit of the machine. */
  static Measured against(double valueRatio, double limitRatio) {
    return new Measured(valueRatio, "", limitRatio, limitRatio);
  }

  /** A count of tools against the seats that have the equipment, fitted or to be had. */
  static Measured seats(int neededCount, Machine machine, Equipment equipment) {
    return new Measured(
        neededCount, "", Seats.fitted(machine, equipment), Seats.withOptions(machine, equipment));
  }
}
