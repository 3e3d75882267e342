package drumline.app.ask;

import drumline.app.listing.RuleListing;
import drumline.route.rule.Practice;
import drumline.route.rule.PracticeReading;
import drumline.shop.inquiry.Overrides;
import java.util.Optional;

/** The rules and figures of the process, as they ship or as an inquiry's shop uses them. */
public final class ListRules {
  private ListRules() {}

  /**
   * Rules with their state, allowances, and what operations reach.
   *
   * @param opened an inquiry whose overrides count, if there is one
   */
  public static String text(Optional<Opened> opened) {
    Overrides overrides =
        opened.flatMap(Opened::findInquiry).map(i -> i.overrides()).orElse(Overrides.NONE);
    Practice practice = PracticeReading.of(overrides).practice();
    return RuleListing.text(practice, overrides);
  }
}
