package drumline.step.inquiry;

import drumline.step.contour.Bore;
import drumline.step.contour.Recess;
import drumline.step.contour.Rim;
import drumline.step.contour.Step;
import drumline.step.feature.Found;
import drumline.step.piece.TurnedPiece;
import drumline.step.turned.Near;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The part of an inquiry as lines of its form. */
final class PartText {
  private final TurnedPiece piece;
  private final Figures figures;
  private final List<String> lines = new ArrayList<>();

  PartText(TurnedPiece piece, Figures figures) {
    this.piece = piece;
    this.figures = figures;
  }

  List<String> lines() {
    lines.add("  outside:");
    int number = 1;
    for (Step step : piece.outside()) {
      lines.add("    - " + outside(step, number++));
    }
    bores("front", piece.bores().front());
    bores("back", piece.bores().back());
    if (!piece.grooves().isEmpty() || !piece.features().isEmpty()) {
      lines.add("");
      lines.add("  features:");
      number = 1;
      for (Recess groove : piece.grooves()) {
        lines.add("    - " + groove(groove, number++));
      }
      number = 1;
      for (Found feature : piece.features()) {
        lines.add("    - " + feature(feature, number++));
      }
    }
    return lines;
  }

  /** The form has no points: a tip is written as this diameter. */
  private static final double TIP_MM = 0.1;

  private String outside(Step step, int number) {
    StringBuilder text = new StringBuilder("{id: step-" + number);
    text.append(", to: ").append(figures.length(step.z1()));
    if (isBar(step)) {
      text.append(", surface: bar");
    } else {
      diameters(text, step.r0(), step.r1());
    }
    edge(text, "edge", step.front());
    edge(text, "back-edge", step.back());
    boolean isPointed = Math.min(step.r0(), step.r1()) < TIP_MM / 2;
    String tip = isPointed ? "   # pointed: written as Ø " + figures.length(TIP_MM) : "";
    return text.append('}').append(tip).toString();
  }

  private boolean isBar(Step step) {
    return !step.isTurned()
        && piece
            .bar()
            .filter(b -> step.z0() > b.z0() - Near.MM && step.z1() < b.z1() + Near.MM)
            .isPresent();
  }

  private void diameters(StringBuilder text, double startR, double endR) {
    if (Near.isSame(startR, endR)) {
      text.append(", diameter: ").append(figures.length(startR + endR));
    } else {
      text.append(", from-diameter: ").append(figures.length(Math.max(TIP_MM, 2 * startR)));
      text.append(", to-diameter: ").append(figures.length(Math.max(TIP_MM, 2 * endR)));
    }
  }

  private void edge(StringBuilder text, String key, Rim rim) {
    switch (rim.kind()) {
      case CHAMFER ->
          text.append(", ")
              .append(key)
              .append(": ")
              .append(figures.length(rim.sizeMm()))
              .append(" x ")
              .append(Figures.plain(rim.angleDeg(), 2))
              .append('°');
      case RADIUS ->
          text.append(", ").append(key).append(": R ").append(figures.length(rim.sizeMm()));
      case NONE -> {}
    }
  }

  private void bores(String end, List<Bore> bores) {
    if (bores.isEmpty()) {
      return;
    }
    lines.add("");
    lines.add("  " + end + "-bore:");
    int number = 1;
    for (Bore bore : bores) {
      StringBuilder text = new StringBuilder("{id: " + end + "-bore-" + number++);
      text.append(", depth: ").append(figures.length(bore.to()));
      diameters(text, bore.startR(), bore.endR());
      edge(text, "edge", bore.mouth());
      String bottom = bore.bottom().name().toLowerCase(Locale.ROOT).replace('_', '-');
      lines.add("    - " + text.append(", bottom: ").append(bottom).append('}'));
    }
  }

  private String groove(Recess groove, int number) {
    String head = "{id: groove-" + number + ", kind: groove, place: ";
    boolean isFront = groove.z0() < piece.lengthMm() - groove.z1();
    String end = isFront ? "front" : "back";
    String width = ", width: " + figures.length(groove.z1() - groove.z0());
    String diameter = ", diameter: " + figures.length(2 * groove.r()) + "}";
    return switch (groove.place()) {
      case OUTSIDE -> head + "outside, at: " + figures.length(groove.z0()) + width + diameter;
      case INSIDE -> {
        boolean fromFront = isInFrontBores(groove);
        double own = fromFront ? groove.z0() : piece.lengthMm() - groove.z1();
        yield head
            + "inside, end: "
            + (fromFront ? "front" : "back")
            + ", at: "
            + figures.length(own)
            + width
            + diameter;
      }
      case FACE ->
          head
              + "face, end: "
              + end
              + ", at: "
              + figures.length(2 * groove.r())
              + ", width: "
              + figures.length(groove.outerR() - groove.r())
              + ", depth: "
              + figures.length(groove.z1() - groove.z0())
              + "}";
    };
  }

  private boolean isInFrontBores(Recess groove) {
    List<Bore> front = piece.bores().front();
    return !front.isEmpty() && groove.z1() < front.get(front.size() - 1).to() + Near.MM;
  }

  private String feature(Found feature, int number) {
    StringBuilder text = new StringBuilder("{id: " + feature.kind() + "-" + number);
    text.append(", kind: ").append(feature.kind());
    for (Map.Entry<String, Object> entry : feature.values().entrySet()) {
      text.append(", ").append(entry.getKey()).append(": ").append(value(entry.getValue()));
    }
    return text.append('}').toString();
  }

  private String value(Object value) {
    if (value instanceof Found.Mm length) {
      return figures.length(length.mm());
    }
    return value instanceof Found.Deg angle
        ? Figures.plain(angle.deg(), 3) + " deg"
        : String.valueOf(value);
  }
}
