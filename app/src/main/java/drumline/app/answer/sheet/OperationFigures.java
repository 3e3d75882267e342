package drumline.app.answer.sheet;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One operation with its data, loads and reason.
 *
 * @param id its name
 * @param featureId feature that it makes
 * @param kind kind of operation
 * @param title as a process sheet says it
 * @param end front, back or either
 * @param toolLabel tool
 * @param toolMaterial what the edge is made of
 * @param condition what the spindle does
 * @param slides kinds of slides
 * @param equipment what slide and spindle need
 * @param spindleRevPerMin speed that the figures are for; 0 where the spindle stands
 * @param lowestRevPerMin slowest good speed
 * @param highestRevPerMin fastest speed
 * @param speedLimit what sets the fastest
 * @param toolRevPerMin speed of a driven tool
 * @param cuttingSpeedMPerMin cutting speed
 * @param feedMmPerRev feed
 * @param depthMm depth of cut
 * @param passCount passes
 * @param travelMm way while cutting
 * @param cutS cutting time
 * @param cuttingForceN main cutting force
 * @param thrustN force along the axis
 * @param torqueNm torque at the spindle
 * @param powerKw power of spindle and driven tool
 * @param toolLifePieces whole pieces of one edge, or null
 * @param reason why it exists
 * @param ruleId rule that made it
 * @param sources where its figures come from
 */
public record OperationFigures(
    String id,
    String featureId,
    String kind,
    String title,
    String end,
    String toolLabel,
    String toolMaterial,
    String condition,
    List<String> slides,
    List<String> equipment,
    double spindleRevPerMin,
    double lowestRevPerMin,
    double highestRevPerMin,
    String speedLimit,
    double toolRevPerMin,
    double cuttingSpeedMPerMin,
    double feedMmPerRev,
    double depthMm,
    int passCount,
    double travelMm,
    double cutS,
    double cuttingForceN,
    double thrustN,
    double torqueNm,
    double powerKw,
    @Nullable Long toolLifePieces,
    String reason,
    String ruleId,
    List<String> sources) {
  /** Copies the lists. */
  public OperationFigures {
    slides = List.copyOf(slides);
    equipment = List.copyOf(equipment);
    sources = List.copyOf(sources);
  }
}
