package drumline.workbench.page;

import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A picture with at most 64 colours: the page is ink on paper and needs no more. */
final class FewColours {
  private static final int MOST = 64;
  private static final int COARSE = 0xF0F0F0;

  private FewColours() {}

  /** The picture in its own most frequent colours; each other point takes the nearest of them. */
  static BufferedImage of(BufferedImage picture) {
    int width = picture.getWidth();
    int height = picture.getHeight();
    int[] points = picture.getRGB(0, 0, width, height, null, 0, width);
    int[] colours = frequent(points);
    BufferedImage few =
        new BufferedImage(
            width,
            height,
            BufferedImage.TYPE_BYTE_INDEXED,
            new IndexColorModel(8, colours.length, colours, 0, false, -1, 0));
    Map<Integer, Integer> nearest = new HashMap<>();
    byte[] row = new byte[width];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        row[x] = nearest.computeIfAbsent(points[y * width + x], c -> near(c, colours)).byteValue();
      }
      few.getRaster().setDataElements(0, y, width, 1, row);
    }
    return few;
  }

  /** The most frequent colour of each coarse shade, the most frequent shades first. */
  private static int[] frequent(int[] points) {
    Map<Integer, Integer> counts = new HashMap<>();
    for (int point : points) {
      counts.merge(point, 1, Integer::sum);
    }
    Map<Integer, Integer> shades = new HashMap<>();
    for (int colour : counts.keySet()) {
      shades.merge(
          colour & COARSE,
          colour,
          (one, other) -> counts.get(one) >= counts.get(other) ? one : other);
    }
    List<Integer> chosen =
        shades.values().stream()
            .sorted((one, other) -> counts.get(other) - counts.get(one))
            .limit(MOST)
            .toList();
    return chosen.stream().mapToInt(Integer::intValue).toArray();
  }

  private static int near(int colour, int[] colours) {
    int best = 0;
    int least = Integer.MAX_VALUE;
    for (int i = 0; i < colours.length; i++) {
      int distance = 0;
      for (int shift = 0; shift <= 16; shift += 8) {
        int difference = (colour >> shift & 0xFF) - (colours[i] >> shift & 0xFF);
        distance += difference * difference;
      }
      if (distance < least) {
        least = distance;
        best = i;
      }
    }
    return best;
  }
}
