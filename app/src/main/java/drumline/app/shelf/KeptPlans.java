package drumline.app.shelf;

import drumline.app.answer.DeskRefusal;
import drumline.app.answer.layout.LayoutEntry;
import drumline.app.layout.KeptLayout;
import drumline.app.layout.KeptLayoutJson;
import drumline.app.layout.LaidOut;
import drumline.economics.study.MoneyStudy;
import drumline.shop.machine.Machine;
import drumline.shop.quantity.Money;
import drumline.store.entry.Plan;
import drumline.store.entry.PlanEntry;
import drumline.store.entry.PlanHead;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;

/** Layouts in the store. */
public final class KeptPlans {
  private static final String PLANNED = "planned";
  private static final String MOVED = "moved";

  private final Shelves shelves;

  public KeptPlans(Shelves shelves) {
    this.shelves = shelves;
  }

  /** Keeps a layout; gives its number. */
  public long keep(
      Shelves.State state, KeptLayout layout, LaidOut laid, double searchS, long seed) {
    String verdict = layout.origin() == KeptLayout.Origin.PLANNED ? PLANNED : MOVED;
    PlanHead head =
        new PlanHead(
            state.entry().id(),
            state.revision(),
            layout.layout().machineName(),
            seed,
            searchS,
            verdict,
            laid.timeline().cycleS(),
            layout.lowerBoundS(),
            laid.money().map(KeptPlans::pieceCost).orElse(null));
    Plan plan =
        shelves.store().plans().add(head, KeptLayoutJson.text(layout), null, shelves.user());
    return plan.id();
  }

  private static Money pieceCost(MoneyStudy money) {
    return new Money(money.cost().total(), Currency.getInstance(money.cost().currency()));
  }

  /** Makes a layout the present one on the revision that the caller has seen. */
  public Shelves.State use(Shelves.State state, long layoutId, String note) {
    return shelves
        .change(
            state.id(),
            state.revision(),
            (shelf, number) ->
                Optional.of(
                    shelf.save(
                        number,
                        state.revision(),
                        state.kept().withLayout(layoutId).kept(),
                        shelves.user(),
                        note)))
        .orElseThrow();
  }

  /** Number of a stored layout of this inquiry. */
  public long number(Shelves.State state, String layoutId) {
    try {
      long number = Long.parseLong(layoutId);
      boolean isThere =
          shelves
              .store()
              .plans()
              .findPlan(number)
              .filter(plan -> plan.head().inquiryId() == state.entry().id())
              .isPresent();
      if (isThere) {
        return number;
      }
    } catch (NumberFormatException e) {
      // said below, like any other number that is not there
    }
    throw DeskRefusal.of(
        DeskRefusal.Kind.MISSING,
        "There is no layout " + layoutId + " of inquiry " + state.id() + ".");
  }

  /** A stored layout as a line of the list; empty for one that was kept without a layout. */
  public Optional<LayoutEntry> entry(Shelves.State state, PlanEntry plan) {
    PlanHead head = plan.head();
    Double cycleS = head.cycleS();
    Double boundS = head.boundS();
    Money cost = head.pieceCost();
    if (cycleS == null || boundS == null) {
      return Optional.empty();
    }
    OptionalLong present = state.kept().layoutId();
    return Optional.of(
        new LayoutEntry(
            String.valueOf(plan.id()),
            head.machine(),
            title(state, head.machine()),
            head.verdict().equals(PLANNED) ? PLANNED : MOVED,
            decimals(cycleS),
            decimals(boundS),
            cost == null ? null : cost.amount().setScale(4, RoundingMode.HALF_UP),
            cost == null ? "" : cost.currency().getCurrencyCode(),
            head.revision(),
            plan.when().toString(),
            plan.who(),
            head.searchS() > 0
                ? String.format(Locale.ROOT, "%.3g s, seed %d", head.searchS(), head.seed())
                : MOVED,
            present.isPresent() && present.getAsLong() == plan.id()));
  }

  private static double decimals(double valueS) {
    return BigDecimal.valueOf(valueS).setScale(3, RoundingMode.HALF_UP).doubleValue();
  }

  private static String title(Shelves.State state, String machineName) {
    return state.read().findInquiry().stream()
        .flatMap(inquiry -> inquiry.machines().stream())
        .filter(machine -> machine.name().equals(machineName))
        .map(Machine::title)
        .findFirst()
        .orElse(machineName);
  }
}
