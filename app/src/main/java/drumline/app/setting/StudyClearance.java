package drumline.app.setting;

import drumline.app.layout.FittedRoute;
import drumline.app.study.MachineStudy;
import drumline.app.study.PlannedLayout;
import drumline.shape.clearance.ClearanceCheck;
import drumline.shape.clearance.ClearanceReport;
import drumline.shape.section.PartSection;
import drumline.shop.operation.OperationKind;

/** Whether a study's tools stay clear of the work, of what holds it, and of one another. */
public final class StudyClearance {
  private StudyClearance() {}

  /** What meets what in a planned layout. */
  public static ClearanceReport of(MachineStudy study, PlannedLayout plan) {
    return ClearanceCheck.of(
        FittedRoute.turned(study.inquiry()),
        study.inquiry().bar(),
        study.machine(),
        plan.states(),
        ToolSetting.of(study, plan),
        pointAngleDeg(study));
  }

  private static double pointAngleDeg(MachineStudy study) {
    return study.route().operations().stream()
        .filter(operation -> operation.kind() == OperationKind.DRILL)
        .mapToDouble(operation -> operation.tool().family().leadAngleDeg())
        .findFirst()
        .orElse(PartSection.USUAL_POINT_ANGLE_DEG);
  }
}
