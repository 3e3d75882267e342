package drumline.app.desk;

import drumline.app.answer.DeskRefusal;
import drumline.app.answer.layout.Comparison;
import drumline.app.answer.layout.Comparison.Difference;
import drumline.app.answer.layout.Comparison.Figure;
import drumline.app.answer.layout.LayoutEntry;
import drumline.app.layout.LaidOut;
import drumline.app.layout.SlideChoice;
import drumline.app.shelf.KeptPlans;
import drumline.app.shelf.LayoutCase;
import drumline.app.shelf.LayoutCases;
import drumline.app.shelf.Shelves;
import drumline.economics.study.MoneyStudy;
import drumline.shop.layout.Placement;
import drumline.store.entry.Plan;
import drumline.store.entry.PlanEntry;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Two stored layouts side by side. */
public final class Comparisons {
  private final Shelves shelves;
  private final LayoutCases cases;
  private final KeptPlans plans;

  Comparisons(Shelves shelves, LayoutCases cases, KeptPlans plans) {
    this.shelves = shelves;
    this.cases = cases;
    this.plans = plans;
  }

  /** A layout with its line in the list. */
  private record Side(LayoutEntry entry, LayoutCase its, LaidOut laid) {}

  /** Figures of both, and which operations stand elsewhere or run at another speed. */
  public Comparison of(String id, String oneId, String otherId) {
    Shelves.State state = shelves.state(id);
    Side one = side(state, oneId);
    Side other = side(state, otherId);
    return new Comparison(one.entry(), other.entry(), figures(one, other), differences(one, other));
  }

  private Side side(Shelves.State state, String layoutId) {
    long number = plans.number(state, layoutId);
    Plan plan = cases.plan(state, number);
    Optional<LayoutEntry> entry =
        plans.entry(state, new PlanEntry(plan.id(), plan.head(), plan.who(), plan.when()));
    Optional<LayoutCase> its = cases.stored(state, number);
    if (entry.isEmpty() || its.isEmpty()) {
      throw DeskRefusal.of(
          DeskRefusal.Kind.REFUSED, "Layout " + layoutId + " cannot be laid out any more.");
    }
    return new Side(entry.get(), its.get(), cases.lay(state, its.get()));
  }

  private static List<Figure> figures(Side one, Side other) {
    List<Figure> figures = new ArrayList<>();
    figures.add(figure("cycle", "s", one, other, 3, s -> s.laid().timeline().cycleS()));
    figures.add(figure("index", "s", one, other, 3, s -> s.laid().timeline().indexS()));
    figures.add(
        figure("rules broken", "", one, other, 0, s -> (double) s.laid().audit().broken().size()));
    figures.add(money("good pieces per hour", "", one, other, 1, m -> m.output().netPerHour()));
    figures.add(money("machines", "", one, other, 0, m -> (double) m.output().machinesCount()));
    String currency = one.entry().currency();
    figures.add(money("piece cost", currency, one, other, 4, m -> m.cost().total().doubleValue()));
    figures.add(money("investment", currency, one, other, 2, m -> m.investment().doubleValue()));
    return figures;
  }

  private static Figure figure(
      String words, String unit, Side one, Side other, int decimals, Function<Side, Double> value) {
    return new Figure(
        words, unit, rounded(value.apply(one), decimals), rounded(value.apply(other), decimals));
  }

  private static Figure money(
      String words,
      String unit,
      Side one,
      Side other,
      int decimals,
      Function<MoneyStudy, Double> value) {
    return new Figure(
        words,
        unit,
        one.laid().money().map(m -> rounded(value.apply(m), decimals)).orElse(null),
        other.laid().money().map(m -> rounded(value.apply(m), decimals)).orElse(null));
  }

  private static BigDecimal rounded(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
  }

  private static List<Difference> differences(Side one, Side other) {
    Set<String> ids = new LinkedHashSet<>();
    one.its().bench().route().operations().forEach(o -> ids.add(o.id()));
    other.its().bench().route().operations().forEach(o -> ids.add(o.id()));
    List<Difference> differences = new ArrayList<>();
    for (String id : ids) {
      Difference difference = difference(id, one, other);
      boolean isSame =
          java.util.Objects.equals(difference.oneSlideId(), difference.otherSlideId())
              && java.util.Objects.equals(difference.oneRevPerMin(), difference.otherRevPerMin());
      if (!isSame) {
        differences.add(difference);
      }
    }
    return differences;
  }

  private static Difference difference(String id, Side one, Side other) {
    Optional<Placement> mine = one.laid().layout().findPlacement(id);
    Optional<Placement> theirs = other.laid().layout().findPlacement(id);
    String title =
        one.its()
            .bench()
            .route()
            .findOperation(id)
            .or(() -> other.its().bench().route().findOperation(id))
            .map(o -> o.title())
            .orElse(id);
    return new Difference(
        id,
        title,
        mine.map(Placement::slideId).orElse(null),
        theirs.map(Placement::slideId).orElse(null),
        position(one, mine),
        position(other, theirs),
        mine.map(p -> rounded(p.spindleRevPerMin(), 1).doubleValue()).orElse(null),
        theirs.map(p -> rounded(p.spindleRevPerMin(), 1).doubleValue()).orElse(null));
  }

  private static @Nullable Integer position(Side side, Optional<Placement> placement) {
    SlideChoice slides = new SlideChoice(side.its().bench().machine());
    return placement.map(p -> slides.position(p.slideId())).orElse(null);
  }
}
