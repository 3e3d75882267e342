package drumline.sheets.content.money;

import drumline.sheets.content.plain.Tone;
import java.math.BigDecimal;

/**
 * One tool on the tool list.
 *
 * @param tool as it is ordered
 * @param usedAt position and slide
 * @param operations operations that it does
 * @param edgesCount edges of one tool, regrinds included
 * @param price price of one tool
 * @param changedEveryCount pieces between two changes
 * @param changePlan when it is changed, in words
 * @param edgesPer1000Count edges for 1000 pieces
 * @param costPer1000 edges for 1000 pieces, in money
 * @param tone whether it stands out
 */
public record ToolRow(
    String tool,
    String usedAt,
    String operations,
    int edgesCount,
    BigDecimal price,
    long changedEveryCount,
    String changePlan,
    double edgesPer1000Count,
    BigDecimal costPer1000,
    Tone tone) {}
