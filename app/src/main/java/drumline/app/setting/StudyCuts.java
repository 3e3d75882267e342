package drumline.app.setting;

import drumline.app.study.MachineStudy;
import drumline.app.study.PlannedLayout;
import drumline.shape.proof.CutCheck;

/** A study's cuts as they really are, against what its route assumes. */
public final class StudyCuts {
  private StudyCuts() {}

  /** Depths, cuts that find nothing, and work after parting in a planned layout. */
  public static CutCheck of(MachineStudy study, PlannedLayout plan) {
    return CutCheck.of(study.route(), plan.states(), study.machine().lastPosition());
  }
}
