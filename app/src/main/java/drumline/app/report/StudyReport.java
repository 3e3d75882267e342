package drumline.app.report;

import drumline.app.economic.EconomicCycle;
import drumline.app.replan.Shortening;
import drumline.app.study.MachineStudy;
import drumline.app.study.PlannedLayout;
import drumline.economics.triage.Triage;
import drumline.intake.library.LibraryChange;
import drumline.sheets.content.StudyContent;
import java.time.LocalDate;
import java.util.List;

/** Fills the content of a study's sheets. */
public final class StudyReport {
  private StudyReport() {}

  /**
   * The content of a planned study.
   *
   * @param study the study whose sheets are written
   * @param others the same inquiry on other machines, for the comparison
   * @param shortenings what would shorten the cycle, if it was asked for
   * @param triage whether the piece belongs on a multi-spindle
   * @param changes figures of the user's own
   * @param date day of the study
   * @param files where its parts lie
   * @throws IllegalArgumentException if the study has no layout
   */
  public static StudyContent content(
      MachineStudy study,
      List<MachineStudy> others,
      List<Shortening> shortenings,
      Triage triage,
      List<LibraryChange> changes,
      LocalDate date,
      List<String> files) {
    PlannedLayout plan =
        study
            .plan()
            .orElseThrow(
                () -> new IllegalArgumentException("study: no layout, allowed: a planned study"));
    EconomicCycle economic = EconomicCycle.of(study, plan);
    return new StudyContent(
        HeadFigures.head(study, plan, triage, date),
        HeadFigures.keyFigures(study, plan),
        study.problems(),
        StudyPictures.pictures(study, plan, economic, shortenings),
        ProcessRows.positions(study, plan),
        SafetyRows.figures(study, plan),
        ProcessRows.orders(study),
        ToolRows.tools(study, plan),
        ToolRows.equipment(study, plan),
        MoneyRows.money(study, plan),
        AlternativeTable.table(study, plan, economic, others),
        CheckRows.audit(study, plan),
        CheckRows.assumptions(study, plan, changes),
        files);
  }
}
