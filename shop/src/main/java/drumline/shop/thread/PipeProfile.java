package drumline.shop.thread;

import drumline.shop.quantity.FigureTable;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Basic sizes of the 55° pipe threads, which G, R, Rp and Rc share.
 *
 * <p>P = 25.4/n and h = 0.640327 P, each rounded to 0.001 mm; pitch diameter D − h, minor diameter
 * D − 2 h. Source: [ISO-228-1] 2000, section 2 and table 1.
 *
 * @param size the pipe size as written, e.g. {@code 1/4}
 * @param majorMm major diameter, mm
 * @param pitchMm pitch, mm
 * @param heightMm height of the thread, mm
 * @param row the row of the table it was read from
 */
record PipeProfile(
    String size, double majorMm, double pitchMm, double heightMm, FigureTable.Row row) {

  static Map<String, PipeProfile> all() {
    Map<String, PipeProfile> all = new LinkedHashMap<>();
    for (FigureTable.Row row : FigureTable.read(PipeProfile.class, "pipe-g-sizes.csv").rows()) {
      double pitchMm = 25.4 / row.figure("threads_per_inch");
      all.put(
          row.text("size"),
          new PipeProfile(
              row.text("size"),
              row.figure("major_mm"),
              StandardRounding.halfUp(pitchMm, 3),
              StandardRounding.halfUp(0.640327 * pitchMm, 3),
              row));
    }
    return all;
  }

  double pitchDiameterMm() {
    return StandardRounding.halfUp(majorMm - heightMm, 3);
  }

  double minorMm() {
    return StandardRounding.halfUp(majorMm - 2 * heightMm, 3);
  }
}
