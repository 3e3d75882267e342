package drumline.sheets.content;

import drumline.sheets.content.money.ComparisonTable;
import drumline.sheets.content.money.EquipmentRow;
import drumline.sheets.content.money.MoneyContent;
import drumline.sheets.content.money.ToolRow;
import drumline.sheets.content.plain.Picture;
import drumline.sheets.content.process.OrderRow;
import drumline.sheets.content.process.PositionSheet;
import drumline.sheets.content.process.SafetyFigure;
import drumline.shop.problem.Problem;
import java.util.List;

/**
 * A study, ready to be written down: what every sheet, screen and table of it says.
 *
 * @param head who, what, and the answer
 * @param keyFigures figures that a reader looks for first, in order
 * @param notices what a person must look at
 * @param pictures part drawing first, then the cycle wall, then others
 * @param process what happens at each position
 * @param safety figures that can hurt someone
 * @param orders which operation must come before which, with reasons
 * @param tools tools with their edges
 * @param equipment what the machine must be fitted with
 * @param money output and cost
 * @param alternatives the same piece made in other ways, side by side
 * @param audit checks of the finished layout
 * @param assumptions what it rests on
 * @param files where the parts of the study lie, for the command line
 */
public record StudyContent(
    StudyHead head,
    List<KeyFigure> keyFigures,
    List<Problem> notices,
    List<Picture> pictures,
    List<PositionSheet> process,
    List<SafetyFigure> safety,
    List<OrderRow> orders,
    List<ToolRow> tools,
    List<EquipmentRow> equipment,
    MoneyContent money,
    ComparisonTable alternatives,
    List<AuditRow> audit,
    List<AssumptionRow> assumptions,
    List<String> files) {

  /** Copies the lists. */
  public StudyContent {
    keyFigures = List.copyOf(keyFigures);
    notices = List.copyOf(notices);
    pictures = List.copyOf(pictures);
    process = List.copyOf(process);
    safety = List.copyOf(safety);
    orders = List.copyOf(orders);
    tools = List.copyOf(tools);
    equipment = List.copyOf(equipment);
    audit = List.copyOf(audit);
    assumptions = List.copyOf(assumptions);
    files = List.copyOf(files);
  }
}
