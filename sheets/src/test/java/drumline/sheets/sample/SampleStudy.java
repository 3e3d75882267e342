package drumline.sheets.sample;

import drumline.economics.triage.Verdict;
import drumline.sheets.content.AssumptionRow;
import drumline.sheets.content.AuditRow;
import drumline.sheets.content.KeyFigure;
import drumline.sheets.content.StudyContent;
import drumline.sheets.content.StudyHead;
import drumline.sheets.content.plain.Picture;
import drumline.sheets.content.plain.Tone;
import drumline.shop.problem.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;

/** A study of an invented customer; its figures are made up to look at the page with. */
public final class SampleStudy {
  private SampleStudy() {}

  /** The study. */
  public static StudyContent study() {
    return titled("Valve bushing", SampleProcess.summary());
  }

  /** The study with another title and summary. */
  public static StudyContent titled(String title, String summary) {
    return new StudyContent(
        new StudyHead(
            title,
            "Nordhang Armaturen",
            "N-1704 rev. B",
            LocalDate.of(2026, 3, 5),
            "Six spindles of the 32 mm class, pick-up spindle",
            "11SMn30 (1.0715), round 32 h9, bars of 3 m",
            Verdict.LOOK_CLOSER,
            summary),
        keys(),
        notices(),
        List.of(
            picture(
                "The piece",
                "Half-section of the finished piece; sizes in millimetres.",
                Picture.Room.COLUMN,
                "part.svg"),
            picture(
                "Cycle",
                "Time runs down from the index. Position 3 governs; white is slack.",
                Picture.Room.WHOLE_SHEET,
                "wall.svg")),
        SampleProcess.positions(),
        SampleProcess.safety(),
        SampleProcess.orders(),
        SampleMoney.tools(),
        SampleMoney.equipment(),
        SampleMoney.money(),
        SampleMoney.alternatives(),
        audit(),
        assumptions(),
        List.of("valve-bushing-study.html", "valve-bushing-layout.yaml"));
  }

  private static List<KeyFigure> keys() {
    return List.of(
        new KeyFigure("Cycle", "5.65", "s", "bound 5.58 s, gap 1.3 %", Tone.MARKED),
        SampleMoney.netOutput(),
        SampleMoney.pieceCost(),
        SampleMoney.payback(),
        SampleMoney.machines());
  }

  private static List<Problem> notices() {
    return List.of(
        Problem.warning(
            "seat-runout",
            "bore Ø9 H8",
            "run-out 0.02 to a diameter cut in another position",
            "at least 0.03, or both cut in one position",
            "Maybe finish the seat in position 5 with the bore."),
        Problem.warning(
            "chip-form",
            "material 11SMn30, operation 40",
            "feed 0.06 mm/rev",
            "0.08 to 0.20 mm/rev for chips that break",
            ""));
  }

  private static List<AuditRow> audit() {
    return List.of(
        row("Every operation has one place", "13 of 13", "13"),
        row("Order of work on the clock", "11 kept", "11"),
        row("Tools on a slide never at once", "0 overlaps", "0"),
        row("Spindle speed, position 2", "4 200 rev/min", "6 000 rev/min"),
        row("Torque, position 3", "14.2 N·m", "32.0 N·m"),
        row("Feed force, slide 3-end", "1 480 N", "4 000 N"),
        new AuditRow("Seats on slide 4-cross", "3 tools", "2 tools", AuditRow.Outcome.BROKEN));
  }

  private static AuditRow row(String check, String figure, String limit) {
    return new AuditRow(check, figure, limit, AuditRow.Outcome.KEPT);
  }

  private static List<AssumptionRow> assumptions() {
    return List.of(
        new AssumptionRow("Index time", "0.60 s", "machine's data sheet"),
        new AssumptionRow("Availability", "90 %", "common practice, from memory"),
        new AssumptionRow(
            "Longest edge life counted on", "480 min", "common practice, from memory"),
        new AssumptionRow("Friction between collet and bar", "0.12", "from memory"),
        new AssumptionRow("Specific cutting force kc1.1", "1 600 N/mm²", "material library"));
  }

  private static Picture picture(String title, String caption, Picture.Room room, String name) {
    return new Picture(title, caption, room, resource(name));
  }

  private static String resource(String name) {
    try (InputStream stream = SampleStudy.class.getResourceAsStream(name)) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
