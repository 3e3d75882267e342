package drumline.app.setting;

import drumline.app.layout.FittedRoute;
import drumline.app.study.MachineStudy;
import drumline.app.study.PlannedLayout;
import drumline.cycle.timeline.OperationSpan;
import drumline.cycle.timeline.PositionTimeline;
import drumline.cycle.timeline.TimeElement;
import drumline.cycle.timeline.TimeElement.Kind;
import drumline.cycle.timeline.Timeline;
import drumline.shape.setting.PositionTools;
import drumline.shape.setting.PositionTools.Job;
import drumline.shape.setting.ToolTimes;
import drumline.shop.machine.Machine;
import drumline.shop.operation.Route;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Sets the tools of a layout out at their positions and times. */
public final class ToolSetting {
  private ToolSetting() {}

  /** Tools of a study's positions in the order of travel, those of back-working last. */
  public static List<PositionTools> of(MachineStudy study, PlannedLayout plan) {
    Part turned = FittedRoute.turned(study.inquiry());
    return of(study.route(), study.machine(), plan.timeline(), turned, study.inquiry().bar());
  }

  private static List<PositionTools> of(
      Route route, Machine machine, Timeline timeline, Part part, Bar bar) {
    List<PositionTimeline> all = new ArrayList<>(timeline.positions());
    Optional.ofNullable(timeline.back()).ifPresent(all::add);
    List<PositionTools> positions = new ArrayList<>();
    for (PositionTimeline position : all) {
      List<Job> jobs = new ArrayList<>();
      for (OperationSpan span : position.operations()) {
        route
            .findOperation(span.operationId())
            .ifPresent(
                operation ->
                    machine
                        .findSlide(span.slideId())
                        .ifPresent(slide -> jobs.add(new Job(operation, slide, times(span)))));
      }
      positions.add(PositionTools.of(position.position(), jobs, part, bar));
    }
    return positions;
  }

  private static ToolTimes times(OperationSpan span) {
    double cutS = span.startS();
    double clearS = span.endS();
    for (TimeElement element : span.elements()) {
      if (element.kind() == Kind.APPROACH) {
        cutS = element.endS();
      } else if (element.kind() == Kind.RETRACT) {
        clearS = element.startS();
      }
    }
    return new ToolTimes(span.startS(), cutS, clearS, span.endS());
  }
}
