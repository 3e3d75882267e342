package drumline.app.report;

import drumline.app.setting.StudyClearance;
import drumline.app.setting.StudyCuts;
import drumline.app.study.MachineStudy;
import drumline.app.study.PlannedLayout;
import drumline.economics.study.Assumptions;
import drumline.intake.library.LibraryChange;
import drumline.planner.check.Finding;
import drumline.shape.clearance.ClearanceReport;
import drumline.shape.clearance.Meeting;
import drumline.shape.proof.CutCheck;
import drumline.shape.proof.CutNote;
import drumline.sheets.content.AssumptionRow;
import drumline.sheets.content.AuditRow;
import drumline.sheets.content.AuditRow.Outcome;
import drumline.shop.material.Confidence;
import drumline.shop.material.Material;
import drumline.shop.operation.Operation;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Checks of the finished layout, and what the study rests on. */
final class CheckRows {
  private CheckRows() {}

  static List<AuditRow> audit(MachineStudy study, PlannedLayout plan) {
    List<AuditRow> rows = new ArrayList<>();
    for (Finding finding : plan.audit().findings()) {
      rows.add(
          new AuditRow(
              finding.name().replace('-', ' '),
              finding.detail(),
              "every rule kept",
              finding.isPassed() ? Outcome.KEPT : Outcome.BROKEN));
    }
    rows.add(
        new AuditRow(
            "route makes the part",
            plan.proof().holds() ? "turned contours agree" : findings(plan),
            "nothing left on, nothing gouged",
            plan.proof().holds() ? Outcome.KEPT : Outcome.BROKEN));
    rows.add(clearance(StudyClearance.of(study, plan)));
    return rows;
  }

  private static AuditRow clearance(ClearanceReport report) {
    String found =
        report.isClear()
            ? report.pairCount() + " pairs looked at, none meet"
            : report.pairCount()
                + " pairs looked at; "
                + String.join("; ", report.meetings().stream().map(Meeting::words).toList());
    return new AuditRow(
        "tools stay clear",
        found,
        "no tool of usual form meets work, collet, jaws or another tool",
        report.isClear() ? Outcome.KEPT : Outcome.BROKEN);
  }

  private static String findings(PlannedLayout plan) {
    return String.join(
        "; ", plan.proof().findings().stream().map(finding -> finding.words()).toList());
  }

  static List<AssumptionRow> assumptions(
      MachineStudy study, PlannedLayout plan, List<LibraryChange> changes) {
    List<AssumptionRow> rows = new ArrayList<>();
    for (LibraryChange change : changes) {
      rows.add(
          new AssumptionRow(
              "Changed by the user: " + change.what(),
              change.now() + " instead of " + change.was(),
              change.where()));
    }
    rows.add(new AssumptionRow("Machine", study.machine().title(), study.machine().source()));
    rows.add(
        new AssumptionRow(
            "Material", study.inquiry().material().name(), study.inquiry().material().source()));
    rows.add(
        new AssumptionRow(
            "Cutting force",
            "kc1.1 "
                + Math.round(study.inquiry().material().force().specificForceMpa())
                + " N/mm², mc "
                + study.inquiry().material().force().exponentRatio(),
            study.inquiry().material().force().source()));
    rows.add(uncertainty(study.inquiry().material(), plan));
    for (String words : Assumptions.usual().words()) {
      int colon = words.indexOf(':');
      rows.add(
          new AssumptionRow(
              words.substring(0, colon),
              words.substring(colon + 1).strip(),
              "common practice, from memory"));
    }
    plan.notes().forEach(note -> rows.add(new AssumptionRow("Planning", note, "the planner")));
    rows.add(depths(StudyCuts.of(study, plan)));
    cuttingSources(study).forEach(rows::add);
    return rows;
  }

  /** How far the cutting figures may be off, and what was done with it. */
  private static AssumptionRow uncertainty(Material material, PlannedLayout plan) {
    Confidence.Spread force = material.force().confidence().spread();
    Confidence.Spread windows = material.confidence().spread();
    return new AssumptionRow(
        "Uncertainty of the cutting figures",
        String.format(
            Locale.ROOT,
            "speeds ±%.0f %%, feeds ±%.0f %% where a window says nothing else (%s), force ±%.0f %%"
                + " (%s)",
            windows.speedPct(),
            windows.feedPct(),
            material.confidence().words(),
            force.forcePct(),
            material.force().confidence().words()),
        plan.range().isPresent()
            ? "the same layout on the clock with all figures at their worst and at their best;"
                + " prices as they are"
            : "no range: other figures would ask for other operations");
  }

  private static AssumptionRow depths(CutCheck check) {
    String found =
        check.notes().isEmpty()
            ? "none beyond " + CutCheck.TOLERANCE_MM + " mm"
            : String.join("; ", check.notes().stream().map(CutNote::words).toList());
    return new AssumptionRow(
        "Cuts other than their loads assume, of " + check.comparedCount() + " compared",
        found,
        "areas taken from the workpiece");
  }

  /** Each source of cutting values once, with the ways of cutting that it stands behind. */
  private static List<AssumptionRow> cuttingSources(MachineStudy study) {
    Set<String> sources = new LinkedHashSet<>();
    for (Operation operation : study.route().operations()) {
      operation.sources().stream()
          .filter(source -> source.startsWith("cutting values: "))
          .map(source -> source.substring("cutting values: ".length()))
          .forEach(sources::add);
    }
    return sources.stream()
        .map(source -> new AssumptionRow("Cutting values", "speeds, feeds, tool life", source))
        .toList();
  }
}
