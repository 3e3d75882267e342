package drumline.intake.part;

import drumline.intake.form.Block;
import drumline.intake.form.Field;
import drumline.intake.form.Form;
import drumline.intake.form.Words;
import drumline.intake.size.EdgeText;
import drumline.intake.size.SizeField;
import drumline.shop.contour.BoreStep;
import drumline.shop.contour.BoreStep.Bottom;
import drumline.shop.contour.Edge;
import drumline.shop.contour.End;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads the steps of a bore, from its face inwards.
 *
 * @param sizes reader of toleranced sizes
 * @param roughnessUm roughness where a step says nothing
 * @param places notes where each step stands
 */
record BoreForm(SizeField sizes, double roughnessUm, ElementPlaces places) {

  static final Form FORM =
      Form.of(
          "bore step",
          "id",
          "depth",
          "length",
          "diameter",
          "from-diameter",
          "to-diameter",
          "tolerance",
          "roughness",
          "edge",
          "bottom");

  List<BoreStep> read(List<Field> items, End end) {
    List<BoreStep> steps = new ArrayList<>();
    double fromMm = 0;
    for (int i = 0; i < items.size(); i++) {
      Optional<Block> block = items.get(i).block(FORM);
      if (block.isPresent()) {
        Bottom usual = i == items.size() - 1 ? Bottom.DRILL_POINT : Bottom.FLAT;
        BoreStep step = step(block.get(), end, fromMm, i + 1, usual);
        steps.add(step);
        fromMm = step.toDepthMm();
      }
    }
    return steps;
  }

  private BoreStep step(Block block, End end, double fromMm, int number, Bottom usual) {
    String id = places.id(block, Words.of(end) + "-bore-" + number);
    double toMm = StepEnd.read(block, "depth", fromMm);
    Diameters diameters = Diameters.read(block, sizes);
    return new BoreStep(
        id,
        end,
        fromMm,
        toMm,
        diameters.startMm(),
        diameters.endMm(),
        diameters.tolerance(),
        PartForm.roughness(block, "roughness", roughnessUm),
        block.find("edge").map(EdgeText::read).orElse(Edge.NONE),
        block.choice("bottom", Bottom.class, usual));
  }
}
