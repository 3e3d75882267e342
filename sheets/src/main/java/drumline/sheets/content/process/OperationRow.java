package drumline.sheets.content.process;

import drumline.sheets.content.plain.Tone;
import drumline.shop.operation.SpindleCondition;
import java.util.OptionalDouble;

/**
 * One operation on the process sheet.
 *
 * @param id number or name
 * @param title what is done
 * @param tool tool that does it
 * @param slide slide that carries it
 * @param condition what the work spindle does
 * @param spindleRevPerMin its speed; not shown unless it turns
 * @param toolRevPerMin speed of a driven tool, empty for tools that stand
 * @param cuttingSpeedMPerMin cutting speed
 * @param feedMmPerRev feed per revolution of work or tool
 * @param timeS from the beginning of the approach to the end of the retract
 * @param cuttingForceN main cutting force
 * @param torqueNm torque at the work spindle, or at a driven tool
 * @param powerKw power at the work spindle, or at a driven tool
 * @param lifePiecesCount pieces that one edge makes
 * @param reason why the operation exists
 * @param tone whether it stands out
 */
public record OperationRow(
    String id,
    String title,
    String tool,
    String slide,
    SpindleCondition condition,
    double spindleRevPerMin,
    OptionalDouble toolRevPerMin,
    double cuttingSpeedMPerMin,
    double feedMmPerRev,
    double timeS,
    double cuttingForceN,
    double torqueNm,
    double powerKw,
    long lifePiecesCount,
    String reason,
    Tone tone) {}
