package drumline.route;

import drumline.route.draft.RouteDraft;
import drumline.route.driven.DeburrMaking;
import drumline.route.driven.DrivenHoles;
import drumline.route.driven.EngravingMaking;
import drumline.route.driven.FlatsMaking;
import drumline.route.finish.BurnishMaking;
import drumline.route.finish.ReachCheck;
import drumline.route.finish.ThreadRoom;
import drumline.route.hole.HoleFinishing;
import drumline.route.hole.HoleMaking;
import drumline.route.hole.HolePlan;
import drumline.route.hole.SlottedMaking;
import drumline.route.order.InsideBurrs;
import drumline.route.parting.CutOffMaking;
import drumline.route.parting.PickUpGrip;
import drumline.route.thread.KnurlMaking;
import drumline.route.thread.ThreadMaking;
import drumline.route.turning.GrooveMaking;
import drumline.route.turning.OutsideProfile;
import drumline.route.turning.OutsideTurning;
import drumline.route.turning.ValleyTurning;
import drumline.shop.contour.End;
import java.util.List;

/** Writes the operations of a piece into a draft, in a usual order of work. */
public final class OperationWriting {
  private OperationWriting() {}

  /** All operations that the print asks for. */
  public static void write(RouteDraft draft) {
    OutsideProfile profile = new OutsideProfile(draft);
    new OutsideTurning(draft, profile).write();
    new ValleyTurning(draft, profile).write();
    hole(draft, End.FRONT);
    new GrooveMaking(draft).write();
    new ThreadMaking(draft).write();
    new KnurlMaking(draft).write();
    new SlottedMaking(draft).write();
    new EngravingMaking(draft).write();
    new DrivenHoles(draft).write();
    new FlatsMaking(draft).write();
    new BurnishMaking(draft).writeFront();
    new CutOffMaking(draft).write();
    hole(draft, End.BACK);
    new BurnishMaking(draft).writeBack();
    new DeburrMaking(draft).write();
    ReachCheck.check(draft);
    ThreadRoom.check(draft);
    InsideBurrs.check(draft);
    PickUpGrip.check(draft);
  }

  private static void hole(RouteDraft draft, End end) {
    List<HolePlan.Step> plan = HolePlan.of(draft, end);
    new HoleMaking(draft, end, plan).write();
    new HoleFinishing(draft, end, plan).write();
  }
}
