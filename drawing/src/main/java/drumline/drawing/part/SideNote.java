package drumline.drawing.part;

import drumline.shop.contour.End;
import java.util.List;

/**
 * A dimension beside the piece, for what is reached from its end.
 *
 * @param element id of the step or feature
 * @param lines one line or two
 * @param end the end it is reached from
 * @param zMm where its arrow ends
 * @param rMm radius there
 * @param way whether the leader goes through the bore or straight to the face
 */
record SideNote(String element, List<String> lines, End end, double zMm, double rMm, Way way) {

  enum Way {
    BORE,
    FACE
  }
}
