package drumline.route.cut;

import drumline.cutting.threading.TapPass;
import drumline.cutting.threading.TappingTorque;
import drumline.cutting.threading.ThreadDepth;
import drumline.cutting.threading.ThreadRunIn;
import drumline.route.cut.HoleWork.Lie;
import drumline.route.draft.RouteDraft;
import drumline.route.draft.ToolChoice;
import drumline.shop.material.Material;
import drumline.shop.operation.Loads;
import drumline.shop.thread.ThreadSize;

/** Cuts that make threads. */
public final class ThreadWork {
  private ThreadWork() {}

  /** How a tap makes the thread. */
  public enum Tapping {
    /** It cuts. */
    CUTTING(1),
    /** It forms; the torque is about 2.5 times a cutting tap's, 2 to 3 by [YAM2]. */
    FORMING(2.5);

    private final double torqueRatio;

    Tapping(double torqueRatio) {
      this.torqueRatio = torqueRatio;
    }
  }

  /**
   * Tapping one or several holes with a driven tap, in and out at the speed between tap and work:
   * the work may turn, or be held.
   *
   * @param lengthMm thread length
   * @param holeCount holes, one after another
   * @param lie how the torque meets the spindle
   */
  public static Cut tap(
      RouteDraft draft,
      ToolChoice choice,
      ThreadSize size,
      double lengthMm,
      int holeCount,
      Lie lie,
      Tapping tapping) {
    TapPass pass = new TapPass(lengthMm, size.pitchMm(), TapPass.Chamfer.FORM_C);
    double revPerMin = DrivenTool.revPerMin(draft, choice, size.majorMm());
    double one = 2 * 60 * pass.revolutionsCount() / revPerMin + draft.allowance("tapReverse");
    double fixed = holeCount * one + (holeCount - 1) * draft.allowance("holdIndex");
    double kc = SpecBuilder.constants(draft.inquiry().material()).specificForceMpa(0.05);
    double torque = TappingTorque.cutNm(kc, size.pitchMm(), size.majorMm()) * tapping.torqueRatio;
    double power = torque * revPerMin / 9549.297;
    return new SpecBuilder(choice)
        .time(0, fixed)
        .driven(revPerMin)
        .on(size.majorMm())
        .chip(size.pitchMm(), ThreadDepth.insideMm(size.pitchMm()), holeCount)
        .way(2 * holeCount * pass.travelMm(), draft.allowance("drillApproach"))
        .with(
            new Loads(
                2000 * torque / size.majorMm(),
                0,
                0,
                lie == Lie.ALONG_AXIS ? torque : 0,
                power,
                0));
  }

  /**
   * Single-point thread in passes.
   *
   * @param outside whether the thread is outside
   * @param lengthMm full thread length
   */
  public static Cut turn(
      RouteDraft draft, ToolChoice choice, ThreadSize size, double lengthMm, boolean outside) {
    double pitch = size.pitchMm();
    double depth = outside ? ThreadDepth.outsideMm(pitch) : ThreadDepth.insideMm(pitch);
    int passes = ThreadPasses.count(draft.inquiry().material(), choice.window(), pitch, depth);
    double way = lengthMm + draft.allowance("threadRunIn") * pitch;
    double top = ThreadRunIn.limitRevPerMin(pitch, 1000 * draft.allowance("threadAxisSpeed"));
    SpeedWindow speeds =
        SpeedWindow.of(choice.window(), size.majorMm()).atMost(top, "axis speed at this pitch");
    int all = passes + (int) draft.allowance("springPasses");
    return new SpecBuilder(choice)
        .speeds(speeds)
        .time(all * way / pitch, all * draft.allowance("threadReturn"))
        .on(size.majorMm())
        .chip(pitch, depth / passes, all)
        .way(all * way, draft.allowance(outside ? "rapidApproach" : "drillApproach"))
        .with(
            SpecBuilder.acrossAxis(
                ThreadPasses.heaviest(draft, size, depth, passes, speeds.highestRevPerMin())));
  }

  /**
   * Rolling between two opposite rolls fed over the work from the side, in a set number of turns.
   * The rolls press against each other, so the slide only draws the attachment in.
   */
  public static Cut roll(RouteDraft draft, ToolChoice choice, ThreadSize size, double lengthMm) {
    SpeedWindow speeds = SpeedWindow.of(choice.window(), size.majorMm());
    double radial = rollsN(draft.inquiry().material(), size, lengthMm);
    double drag = draft.allowance("rollDrag") * radial;
    double torque = drag * size.majorMm() / 2000;
    return new SpecBuilder(choice)
        .speeds(speeds)
        .time(draft.allowance("rollTurns"), 0)
        .dwell(draft.allowance("bottomDwell"))
        .on(size.majorMm())
        .chip(size.pitchMm(), ThreadDepth.outsideMm(size.pitchMm()), 1)
        .way(size.pitchMm(), draft.allowance("rapidApproach"))
        .with(new Loads(drag, 0, 0, torque, 0, 2 * drag));
  }

  /**
   * Force with which rolls press on the work.
   *
   * <p>F = 2·Rm·b·l: Rm tensile strength in N/mm², b width of contact around the work, taken as a
   * fifth of the thread's depth times the square root of its diameter, l thread length in mm; a
   * rough estimate for the check of slide and section. Source: from memory, weak; the maker of the
   * rolls decides.
   */
  private static double rollsN(Material material, ThreadSize size, double lengthMm) {
    double contact = 0.2 * 0.6134 * size.pitchMm() * Math.sqrt(size.majorMm());
    return 2 * material.tensileMpa() * contact * lengthMm;
  }
}
