package drumline.route.driven;

import static drumline.route.feature.Words.dia;

import drumline.cutting.drilling.DrillPass.DepthTo;
import drumline.route.cut.HoleWork;
import drumline.route.cut.HoleWork.Lie;
import drumline.route.cut.ThreadWork;
import drumline.route.cut.ThreadWork.Tapping;
import drumline.route.draft.Reach;
import drumline.route.draft.RouteDraft;
import drumline.route.draft.ToolChoice;
import drumline.route.feature.OperationMaker;
import drumline.route.feature.Places;
import drumline.shop.contour.End;
import drumline.shop.feature.CrossHole;
import drumline.shop.feature.FaceHoles;
import drumline.shop.machine.Equipment;
import drumline.shop.machine.SlideKind;
import drumline.shop.material.CuttingProcess;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.SpindleCondition;
import drumline.shop.operation.WorkEnd;
import drumline.shop.part.Part;
import drumline.shop.problem.Problem;
import drumline.shop.thread.ThreadSize;
import drumline.shop.tooling.ToolKind;
import java.util.Locale;

/** Cross holes and face holes with driven tools: rules {@code cross-hole}, {@code face-holes}. */
public final class DrivenHoles {
  private final RouteDraft draft;

  /** For a draft. */
  public DrivenHoles(RouteDraft draft) {
    this.draft = draft;
  }

  /** Writes them into the draft. */
  public void write() {
    draft.inquiry().part().features(CrossHole.class).forEach(this::cross);
    draft.inquiry().part().features(FaceHoles.class).forEach(this::face);
  }

  private void cross(CrossHole hole) {
    boolean through = hole.reach() == CrossHole.Reach.THROUGH;
    int holes = through && hole.count() % 2 == 0 ? hole.count() / 2 : hole.count();
    lean(hole);
    draft
        .tool(hole.id(), ToolKind.DRIVEN_DRILL, CuttingProcess.DRILL, hole.diameterMm())
        .ifPresent(
            choice -> {
              reach(choice, hole.depthMm());
              maker(OperationKind.CROSS_DRILL, hole.id(), "cross-hole")
                  .title("cross drill " + count(hole.count()) + dia(hole.diameterMm()))
                  .add(
                      choice,
                      HoleWork.driven(
                          draft,
                          choice,
                          hole.depthMm(),
                          through ? DepthTo.THROUGH : DepthTo.FULL_DIAMETER,
                          holes,
                          Lie.ACROSS_AXIS));
            });
    ThreadSize thread = hole.thread();
    if (thread != null) {
      boolean open = through || opensIntoBore(hole);
      tap(
          maker(OperationKind.CROSS_TAP, hole.id(), "cross-hole"),
          hole.id(),
          thread,
          open ? hole.depthMm() : blindMm(thread, hole.depthMm()),
          hole.count(),
          Lie.ACROSS_AXIS);
    }
  }

  /** Whether the hole ends in a bore, so that a tap may run out. */
  private boolean opensIntoBore(CrossHole hole) {
    Part part = draft.inquiry().part();
    double outside = Places.outsideDiameterMm(part, hole.zMm(), 0);
    double bore =
        Math.max(
            Places.boreDiameterMm(part, End.FRONT, hole.zMm()),
            Places.boreDiameterMm(part, End.BACK, part.lengthMm() - hole.zMm()));
    return bore > 0 && hole.depthMm() > (outside - bore) / 2;
  }

  /**
   * Thread length above a blind bottom: the tap's chamfer of 2.5 pitches and a little more stay
   * clear of it.
   */
  private double blindMm(ThreadSize thread, double drilledMm) {
    double clear = (2.5 + draft.allowance("tapClear")) * thread.pitchMm();
    return Math.max(thread.pitchMm(), drilledMm - clear);
  }

  private void lean(CrossHole hole) {
    if (Math.abs(hole.leanDeg()) > draft.allowance("leanMost")) {
      draft.problem(
          Problem.warning(
              "leaning-hole",
              hole.id(),
              String.format(Locale.ROOT, "a lean of %.0f°", hole.leanDeg()),
              String.format(Locale.ROOT, "%.0f° for a drill alone", draft.allowance("leanMost")),
              "Maybe mill a flat with an end mill in the same angled head before drilling."));
    }
  }

  private void reach(ToolChoice choice, double depthMm) {
    Reach.check(
        draft,
        choice,
        depthMm,
        choice.tool().sizeMm(),
        "Maybe drill from both sides, or take a longer drill after a pilot.");
  }

  private void face(FaceHoles holes) {
    WorkEnd end = holes.end() == End.FRONT ? WorkEnd.FRONT : WorkEnd.BACK;
    draft
        .tool(holes.id(), ToolKind.DRIVEN_DRILL, CuttingProcess.DRILL, holes.diameterMm())
        .ifPresent(
            choice -> {
              reach(choice, holes.depthMm());
              maker(OperationKind.FACE_DRILL, holes.id(), "face-holes")
                  .title(
                      "drill "
                          + count(holes.count())
                          + dia(holes.diameterMm())
                          + " on "
                          + dia(holes.pitchCircleMm()))
                  .end(end)
                  .from(SlideKind.END)
                  .add(
                      choice,
                      HoleWork.driven(
                          draft,
                          choice,
                          holes.depthMm(),
                          DepthTo.FULL_DIAMETER,
                          holes.count(),
                          Lie.ALONG_AXIS));
            });
    ThreadSize thread = holes.thread();
    if (thread != null) {
      tap(
          maker(OperationKind.FACE_TAP, holes.id(), "face-holes").end(end).from(SlideKind.END),
          holes.id(),
          thread,
          blindMm(thread, holes.depthMm()),
          holes.count(),
          Lie.ALONG_AXIS);
    }
  }

  private OperationMaker maker(OperationKind kind, String id, String rule) {
    return new OperationMaker(draft, kind, id, rule)
        .needs(SpindleCondition.HELD, Equipment.LIVE_TOOL, Equipment.C_AXIS);
  }

  private void tap(
      OperationMaker maker, String id, ThreadSize thread, double lengthMm, int count, Lie lie) {
    draft
        .tool(id, ToolKind.DRIVEN_TAP, CuttingProcess.TAP, thread.majorMm())
        .ifPresent(
            choice ->
                maker
                    .title("tap " + count(count) + thread.designation())
                    .add(
                        choice,
                        ThreadWork.tap(
                            draft, choice, thread, lengthMm, count, lie, Tapping.CUTTING)));
  }

  private static String count(int count) {
    return count == 1 ? "" : count + " × ";
  }
}
