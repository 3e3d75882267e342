package drumline.intake.part;

import drumline.intake.form.Block;
import drumline.intake.form.Field;
import drumline.intake.form.Form;
import drumline.intake.form.Plain;
import drumline.intake.form.Range;
import drumline.intake.size.EdgeText;
import drumline.intake.size.SizeField;
import drumline.shop.contour.Edge;
import drumline.shop.contour.OutsideStep;
import drumline.shop.contour.OutsideStep.Surface;
import drumline.shop.part.Bar;
import drumline.shop.quantity.QuantityKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads the steps of the outside, front to back.
 *
 * @param sizes reader of toleranced sizes
 * @param bar the stock, whose surface a step may keep
 * @param roughnessUm roughness where a step says nothing
 * @param places notes where each step stands
 */
record OutsideForm(SizeField sizes, Bar bar, double roughnessUm, ElementPlaces places) {

  static final Form FORM =
      Form.of(
          "outside step",
          "id",
          "to",
          "length",
          "diameter",
          "from-diameter",
          "to-diameter",
          "tolerance",
          "surface",
          "roughness",
          "edge",
          "back-edge");

  List<OutsideStep> read(List<Field> items) {
    List<OutsideStep> steps = new ArrayList<>();
    double fromMm = 0;
    for (Field item : items) {
      Optional<Block> block = item.block(FORM);
      if (block.isPresent()) {
        OutsideStep step = step(block.get(), fromMm, steps.size() + 1);
        steps.add(step);
        fromMm = step.toZMm();
      }
    }
    return steps;
  }

  private OutsideStep step(Block block, double fromMm, int number) {
    String id = places.id(block, "outside-" + number);
    double toMm = StepEnd.read(block, "to", fromMm);
    Surface surface = block.choice("surface", Surface.class, Surface.TURNED);
    Diameters diameters = surface == Surface.BAR ? barSize(block) : Diameters.read(block, sizes);
    return new OutsideStep(
        id,
        fromMm,
        toMm,
        diameters.startMm(),
        diameters.endMm(),
        surface,
        diameters.tolerance(),
        PartForm.roughness(block, "roughness", roughnessUm),
        edge(block, "edge"),
        edge(block, "back-edge"));
  }

  private Diameters barSize(Block block) {
    double sizeMm = block.quantity("diameter", QuantityKind.LENGTH, Range.POSITIVE, bar.sizeMm());
    if (!Double.isNaN(sizeMm) && Math.abs(sizeMm - bar.sizeMm()) > 1e-6) {
      block
          .require("diameter")
          .ifPresent(
              f ->
                  f.report(
                      "not-the-bar",
                      f.node().words() + " with the bar's own surface",
                      "the bar's size, " + Plain.number(bar.sizeMm()) + " mm, or no diameter",
                      ""));
    }
    return Diameters.ofBar(bar);
  }

  private static Edge edge(Block block, String key) {
    return block.find(key).map(EdgeText::read).orElse(Edge.NONE);
  }
}
