package drumline.app.report;

import static drumline.sheets.Figures.number;

import drumline.app.study.MachineStudy;
import drumline.app.study.PlannedLayout;
import drumline.cycle.spindle.GripDiameters;
import drumline.cycle.spindle.SpindleShares;
import drumline.cycle.spindle.WorkSpindle;
import drumline.cycle.timeline.OperationSpan;
import drumline.cycle.timeline.PositionTimeline;
import drumline.sheets.content.plain.Tone;
import drumline.sheets.content.process.SafetyFigure;
import drumline.sheets.content.process.SafetyKind;
import drumline.shop.material.IsoGroup;
import drumline.shop.operation.Operation;
import java.util.ArrayList;
import java.util.List;

/** Figures that can hurt someone, each with its caution. */
final class SafetyRows {
  private static final double SLENDER_RATIO = 3;

  private SafetyRows() {}

  static List<SafetyFigure> figures(MachineStudy study, PlannedLayout plan) {
    List<SafetyFigure> figures = new ArrayList<>();
    figures.add(grip(study, plan));
    figures.add(barSpeed(study, plan));
    double length = study.inquiry().part().lengthMm();
    double ratio = length / study.inquiry().bar().sizeMm();
    figures.add(
        new SafetyFigure(
            SafetyKind.SLENDER,
            "Piece length over bar size, unsupported",
            number(ratio, 2),
            number(SLENDER_RATIO, 1),
            ratio > SLENDER_RATIO ? Tone.MARKED : Tone.PLAIN));
    fire(study, figures);
    return figures;
  }

  /** The greatest share of the collet's grip that one operation takes, safety counted in. */
  private static SafetyFigure grip(MachineStudy study, PlannedLayout plan) {
    GripDiameters diameters = GripDiameters.of(study.inquiry().part(), study.inquiry().bar());
    WorkSpindle drum = WorkSpindle.ofDrum(study.machine(), diameters);
    double most = 0;
    String where = "no operation";
    for (PositionTimeline position : plan.timeline().positions()) {
      for (OperationSpan span : position.operations()) {
        Operation operation = study.route().operation(span.operationId());
        double share =
            SpindleShares.gripShareRatio(operation.loads(), drum, span.spindleRevPerMin());
        if (share > most) {
          most = share;
          where = operation.title() + ", position " + position.position();
        }
      }
    }
    return new SafetyFigure(
        SafetyKind.CLAMPING,
        "Greatest load on a collet's grip, safety "
            + number(study.machine().workholding().safetyRatio(), 1)
            + " counted in: "
            + where,
        number(100 * most, 0) + " %",
        "100 %",
        most > 0.95 ? Tone.MARKED : Tone.PLAIN);
  }

  private static SafetyFigure barSpeed(MachineStudy study, PlannedLayout plan) {
    double fastest =
        plan.timeline().positions().stream()
            .flatMap(position -> position.operations().stream())
            .mapToDouble(OperationSpan::spindleRevPerMin)
            .max()
            .orElse(0);
    double limit = study.machine().drive().highestRevPerMin();
    return new SafetyFigure(
        SafetyKind.BAR_SPEED,
        "Fastest spindle with bar in it",
        number(fastest, 0) + " rev/min",
        number(limit, 0) + " rev/min, the spindle's; the bar's own limit is lower as a rule",
        fastest > 0.95 * limit ? Tone.MARKED : Tone.PLAIN);
  }

  private static void fire(MachineStudy study, List<SafetyFigure> figures) {
    var material = study.inquiry().material();
    boolean titanium = material.group() == IsoGroup.S && material.densityKgPerDm3() < 5;
    figures.add(
        new SafetyFigure(
            titanium ? SafetyKind.TITANIUM_FIRE : SafetyKind.OIL_FIRE,
            titanium ? "Chips of " + material.name() : "Straight cutting oil, as usual here",
            titanium ? "fine chips burn" : "mist can ignite",
            "the plant's fire rules",
            titanium ? Tone.MARKED : Tone.PLAIN));
  }
}
