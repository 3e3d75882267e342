package drumline.shop.check;

import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import drumline.shop.problem.Problem;
import java.util.List;

/**
 * Checks a piece before it is planned: contours closed, features inside the material, walls left,
 * threads on steps of their size, the bar large enough.
 *
 * <p>Known limits: features are checked one by one against the contours, not against each other;
 * drill cones count only where bores meet.
 */
public final class PartCheck {

  private PartCheck() {}

  /**
   * Everything that is wrong with the piece, or that a person must look at.
   *
   * @param part the piece
   * @param bar the stock
   * @return problems whose place is the id of an element, {@code relation} with its number from 1,
   *     {@code part} or {@code bar}
   */
  public static List<Problem> check(Part part, Bar bar) {
    Findings findings = new Findings();
    ReferenceCheck.check(part, findings);
    ContourCheck.check(part, findings);
    BoreCheck.check(part, findings);
    if (findings.problems().isEmpty()) {
      Profile profile = Profile.of(part);
      BarCheck.check(part, bar, findings);
      WallCheck.check(part, profile, findings);
      GrooveCheck.check(part, profile, findings);
      ThreadCheck.check(part, findings);
      HoleCheck.check(part, profile, findings);
      MilledCheck.check(part, profile, findings);
      SlottedCheck.check(part, profile, findings);
      FinenessCheck.check(part, findings);
    }
    return List.copyOf(findings.problems());
  }
}
