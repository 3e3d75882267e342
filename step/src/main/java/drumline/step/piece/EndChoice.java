package drumline.step.piece;

import drumline.step.contour.Recess;
import drumline.step.contour.Step;
import drumline.step.feature.Found;
import drumline.step.turned.Near;
import java.util.List;

/**
 * Which end is the front: the one with more bores, holes, forms and grooves to be made from it; of
 * equal ends the one farther from the largest diameter; then the one with the smaller face; then
 * the end with the lesser coordinate along the axis as it stands in the file. Common practice: the
 * cut-off side is the one with less work.
 *
 * @param isTurned whether the piece should be turned end for end
 * @param reason why, as a sentence
 */
record EndChoice(boolean isTurned, String reason) {

  static EndChoice of(TurnedPiece piece) {
    int front = work(piece, true);
    int back = work(piece, false);
    if (front != back) {
      return new EndChoice(
          back > front,
          "the front is the end with more work in it ("
              + Math.max(front, back)
              + " against "
              + Math.min(front, back)
              + " bores, holes, forms and grooves)");
    }
    double widest = middleOfWidest(piece.outside());
    if (Math.abs(widest - piece.lengthMm() / 2) > Near.MM) {
      return new EndChoice(
          widest < piece.lengthMm() / 2,
          "both ends have equal work; the front is the end farther from the largest diameter");
    }
    double first = piece.outside().get(0).r0();
    double last = piece.outside().get(piece.outside().size() - 1).r1();
    boolean isSame = Near.isSame(first, last);
    return new EndChoice(
        !isSame && first > last,
        isSame
            ? "nothing tells the ends apart; the front is the end with the lesser coordinate"
            : "the front is the end with the smaller face");
  }

  private static int work(TurnedPiece piece, boolean isFront) {
    int work = isFront ? piece.bores().front().size() : piece.bores().back().size();
    boolean isThrough =
        isFront
            && !piece.bores().front().isEmpty()
            && piece.bores().front().get(piece.bores().front().size() - 1).bottom()
                == drumline.step.contour.Bore.Bottom.THROUGH;
    work -= isThrough ? 1 : 0;
    String end = isFront ? "front" : "back";
    for (Found found : piece.features()) {
      Object where = found.values().getOrDefault("end", found.values().get("place"));
      work += String.valueOf(where).startsWith(end) ? 1 : 0;
    }
    for (Recess groove : piece.grooves()) {
      boolean isOwn = isFront == groove.z0() < Near.MM;
      work += groove.place() == Recess.Place.FACE && isOwn ? 1 : 0;
    }
    return work;
  }

  private static double middleOfWidest(List<Step> steps) {
    double most = 0;
    for (Step s : steps) {
      most = Math.max(most, Math.max(s.r0(), s.r1()));
    }
    double from = Double.MAX_VALUE;
    double to = 0;
    for (Step s : steps) {
      if (Math.max(s.r0(), s.r1()) > most - Near.MM) {
        from = Math.min(from, s.z0());
        to = Math.max(to, s.z1());
      }
    }
    return (from + to) / 2;
  }
}
