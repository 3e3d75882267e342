package drumline.economics.triage;

import drumline.shop.contour.BoreStep;
import drumline.shop.contour.End;
import drumline.shop.contour.OutsideStep;
import drumline.shop.feature.CrossHole;
import drumline.shop.feature.Deburring;
import drumline.shop.feature.Engraving;
import drumline.shop.feature.FaceHoles;
import drumline.shop.feature.Feature;
import drumline.shop.feature.Flats;
import drumline.shop.feature.Groove;
import drumline.shop.feature.Knurl;
import drumline.shop.feature.MilledSlot;
import drumline.shop.feature.ScrewThread;
import drumline.shop.feature.SlottedForm;
import drumline.shop.part.Part;
import java.util.List;

/**
 * Counts tools off a print, roughly: facing, rough and finish turning, cut-off; spotting once, a
 * drill for each bore step and a second tool for grade 9 or better; one for each other feature, two
 * where it is tapped. Source: common practice, from memory.
 */
final class PrintCount {
  private static final int FINISHED_BORE_GRADE = 9;
  private int front = 2;
  private int back;
  private int live;

  private PrintCount() {}

  static PrintCount of(Part part) {
    PrintCount count = new PrintCount();
    boolean turned =
        part.outside().stream().anyMatch(step -> step.surface() == OutsideStep.Surface.TURNED);
    count.front += turned ? 2 : 0;
    count.front += bore(part.frontBore());
    count.back += bore(part.backBore());
    part.features().forEach(count::add);
    return count;
  }

  ToolNeed need() {
    return new ToolNeed(front, back, live, 0, 0, "estimated from the print");
  }

  private static int bore(List<BoreStep> steps) {
    int finished =
        (int)
            steps.stream()
                .filter(step -> step.tolerance().itGrade().orElse(99) <= FINISHED_BORE_GRADE)
                .count();
    return steps.isEmpty() ? 0 : 1 + steps.size() + finished;
  }

  private void add(Feature feature) {
    if (feature instanceof CrossHole hole) {
      driven(false, hole.thread() == null ? 1 : 2);
    } else if (feature instanceof FaceHoles holes) {
      driven(holes.end() == End.BACK, holes.thread() == null ? 1 : 2);
    } else if (feature instanceof Flats flats) {
      driven(false, 1);
      live -= flats.method() == Flats.Method.POLYGON ? 1 : 0;
    } else if (feature instanceof MilledSlot slot) {
      driven(slot.place() == MilledSlot.Place.BACK_FACE, 1);
    } else if (feature instanceof Engraving text) {
      driven(text.place() == Engraving.Place.BACK_FACE, 1);
    } else if (feature instanceof Deburring) {
      driven(false, 1);
    } else if (feature instanceof Groove groove) {
      standing(groove.end());
    } else if (feature instanceof SlottedForm form) {
      standing(form.end());
    } else if (feature instanceof ScrewThread || feature instanceof Knurl) {
      standing(End.FRONT);
    }
  }

  private void driven(boolean atBack, int tools) {
    front += atBack ? 0 : tools;
    back += atBack ? tools : 0;
    live += tools;
  }

  private void standing(End end) {
    front += end == End.FRONT ? 1 : 0;
    back += end == End.BACK ? 1 : 0;
  }
}
