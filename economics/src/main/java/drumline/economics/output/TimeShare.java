package drumline.economics.output;

import java.util.ArrayList;
import java.util.List;

/**
 * A share of the time that one good piece takes.
 *
 * @param reason what the time goes to
 * @param perGoodPieceS seconds for one good piece
 */
public record TimeShare(String reason, double perGoodPieceS) {

  /** The shares of a piece: cycle, stops, breakdowns and waiting, time spent on scrap. */
  static List<TimeShare> list(
      double pieceS, List<StopLoss> stops, double availableRatio, double goodRatio) {
    List<TimeShare> shares = new ArrayList<>();
    shares.add(new TimeShare("cycle", pieceS));
    double runningS = pieceS;
    for (StopLoss stop : stops) {
      shares.add(new TimeShare(stop.reason(), stop.perPieceS()));
      runningS += stop.perPieceS();
    }
    shares.add(new TimeShare("breakdowns and waiting", runningS / availableRatio - runningS));
    double plannedS = runningS / availableRatio;
    shares.add(new TimeShare("pieces that are not good", plannedS / goodRatio - plannedS));
    return List.copyOf(shares);
  }
}
