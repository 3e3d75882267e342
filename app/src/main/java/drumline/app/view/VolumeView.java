package drumline.app.view;

import drumline.app.answer.money.VolumeCurve;
import drumline.app.answer.money.VolumeCurve.Crossing;
import drumline.app.answer.money.VolumeCurve.Line;
import drumline.economics.cost.BreakEven;
import drumline.economics.cost.CostLine;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** Cost of a year against its volume, way by way, with the crossings. */
final class VolumeView {
  private static final int STEPS = 24;
  private static final String WORDS =
      "Cost of a year when the machines are paid for by this piece alone, written off in equal"
          + " yearly shares; as many machines as the inquiry's own volume needs.";

  /**
   * One way.
   *
   * @param name short name
   * @param line its costs; the name in it is for readers
   */
  record Way(String name, CostLine line) {}

  private VolumeView() {}

  static VolumeCurve curve(long perYear, List<Way> ways) {
    List<Crossing> crossings = new ArrayList<>();
    TreeSet<Long> volumes = new TreeSet<>();
    for (int i = 0; i <= STEPS; i++) {
      volumes.add(2 * perYear * i / STEPS);
    }
    for (int i = 0; i < ways.size(); i++) {
      for (int k = i + 1; k < ways.size(); k++) {
        Crossing crossing = crossing(ways.get(i), ways.get(k));
        crossings.add(crossing);
        Long at = crossing.piecesCount();
        if (at != null && at <= 2 * perYear) {
          volumes.add(at);
        }
      }
    }
    List<Long> all = List.copyOf(volumes);
    return new VolumeCurve(
        perYear, all, ways.stream().map(way -> line(way, all)).toList(), crossings, WORDS);
  }

  private static Line line(Way way, List<Long> volumes) {
    return new Line(
        way.name(),
        way.line().name(),
        Rounded.money(way.line().fixed()),
        Rounded.perPiece(way.line().perPiece()),
        volumes.stream().map(n -> Rounded.money(way.line().cost(n))).toList());
  }

  private static Crossing crossing(Way one, Way other) {
    BreakEven even = BreakEven.between(one.line(), other.line());
    if (even.piecesCount().isEmpty()) {
      return new Crossing(one.name(), other.name(), null, null, even.words());
    }
    long pieces = (long) Math.ceil(even.piecesCount().getAsDouble());
    return new Crossing(
        one.name(), other.name(), pieces, Rounded.money(one.line().cost(pieces)), even.words());
  }
}
