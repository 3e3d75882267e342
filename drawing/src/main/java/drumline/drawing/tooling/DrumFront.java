package drumline.drawing.tooling;

import drumline.cycle.timeline.PositionTimeline;
import drumline.drawing.svg.Anchor;
import drumline.drawing.svg.Box;
import drumline.drawing.svg.HatchKind;
import drumline.drawing.svg.SvgPath;
import drumline.drawing.svg.SvgPen;
import drumline.drawing.svg.SvgSheet;
import drumline.drawing.view.Arrow;
import drumline.shape.setting.PositionTools;
import drumline.shop.machine.Position;
import drumline.shop.machine.SlideKind;
import drumline.shop.machine.ToolSlide;
import java.util.ArrayList;
import java.util.List;

/**
 * The drum as the operator sees it from the front: positions round the circle with their slides,
 * spindles and tools.
 *
 * <p>Known limit: a machine's description does not say where its first position lies or which way
 * the drum turns; they are drawn from the top right, clockwise, and the sheet says so.
 */
public final class DrumFront {

  private static final double WIDTH_MM = 297;
  private static final double HEIGHT_MM = 210;
  private static final double CENTRE_X = WIDTH_MM / 2 + 5;
  private static final double CENTRE_Y = 97;
  private static final double DRUM_MM = 52;
  private static final double SPINDLES_MM = 38;
  private static final double SPINDLE_MM = 8.2;
  private static final double BLOCK_MM = 12;
  private static final double CARD_MM = 66;

  private final ToolSheet sheet;
  private final int count;
  private final SvgPen pen = new SvgPen();

  private DrumFront(ToolSheet sheet) {
    this.sheet = sheet;
    this.count = sheet.machine().lastPosition();
  }

  /** The drawing, an A4 in landscape. */
  public static String svg(ToolSheet sheet) {
    return new DrumFront(sheet).draw();
  }

  private String draw() {
    pen.rect("sheet-frame", new Box(20, 10, WIDTH_MM - 30, HEIGHT_MM - 20));
    pen.circle("wide", CENTRE_X, CENTRE_Y, DRUM_MM);
    travel();
    List<DrumCard> right = new ArrayList<>();
    List<DrumCard> left = new ArrayList<>();
    for (Position position : sheet.machine().positions()) {
      position(position);
      DrumCard card = card(position);
      if (Math.cos(angleRad(position.number())) >= 0) {
        right.add(card);
      } else {
        left.add(0, card);
      }
    }
    cards(right, WIDTH_MM - 15, Anchor.END);
    cards(left, 25, Anchor.START);
    back();
    foot();
    return new SvgSheet(
            "drum",
            "The drum from the front: " + sheet.part().name(),
            words(left, right),
            WIDTH_MM,
            HEIGHT_MM,
            SvgSheet.Unit.MM,
            sheet.look())
        .svg(pen);
  }

  /** Angle of a position, clockwise from the right on the sheet. */
  private double angleRad(int number) {
    return 2 * Math.PI * (number - 0.5) / count - Math.PI / 2;
  }

  private void position(Position position) {
    double angle = angleRad(position.number());
    double x = CENTRE_X + SPINDLES_MM * Math.cos(angle);
    double y = CENTRE_Y + SPINDLES_MM * Math.sin(angle);
    PositionTools tools = tools(position.number());
    boolean governs = sheet.timeline().governing() == position.number();
    pen.open(governs ? "marked" : "", "data-position", String.valueOf(position.number()));
    List<ToolSlide> cross =
        position.slides().stream().filter(slide -> slide.kind() == SlideKind.CROSS).toList();
    double turn = Math.min(0.33, Math.PI / count * 0.9);
    for (int i = 0; i < cross.size(); i++) {
      double at = angle + (i - (cross.size() - 1) / 2.0) * turn;
      block(at, DrumCard.isDriven(cross.get(i), tools));
    }
    position.slides().stream()
        .filter(slide -> slide.kind() == SlideKind.END)
        .forEach(slide -> facing(x, y, DrumCard.isDriven(slide, tools)));
    pen.circle("spindle-circle", x, y, SPINDLE_MM);
    bar(x, y);
    if (DrumCard.parts(tools)) {
      pen.circle("thin", x, y, SPINDLE_MM - 1.2);
    }
    double inner = SPINDLES_MM - SPINDLE_MM - 5.5;
    pen.text(
        "bold",
        CENTRE_X + inner * Math.cos(angle),
        CENTRE_Y + inner * Math.sin(angle) + 1.6,
        4.6,
        Anchor.MIDDLE,
        String.valueOf(position.number()));
    pen.close();
  }

  /** A slide beside the spindle: a block outside the drum that points inwards. */
  private void block(double angle, boolean isDriven) {
    double half = BLOCK_MM / 2;
    double near = DRUM_MM + 2;
    double far = near + BLOCK_MM;
    SvgPath path = new SvgPath();
    turned(path, angle, near + 3, -half, false);
    turned(path, angle, near, 0, true);
    turned(path, angle, near + 3, half, true);
    turned(path, angle, far, half, true);
    turned(path, angle, far, -half, true);
    path.close();
    pen.path("plate", path);
    pen.path("block", path, "fill", isDriven ? SvgPen.fill(HatchKind.SPARSE) : "none");
  }

  private static void turned(SvgPath path, double angle, double out, double aside, boolean isLine) {
    double x = CENTRE_X + out * Math.cos(angle) - aside * Math.sin(angle);
    double y = CENTRE_Y + out * Math.sin(angle) + aside * Math.cos(angle);
    if (isLine) {
      path.line(x, y);
    } else {
      path.move(x, y);
    }
  }

  /** A slide that faces the spindle: a square in front of it. */
  private void facing(double x, double y, boolean isDriven) {
    double half = SPINDLE_MM + 1.4;
    Box box = new Box(x - half, y - half, 2 * half, 2 * half);
    pen.rect("facing", box, "fill", isDriven ? SvgPen.fill(HatchKind.SPARSE) : "none");
  }

  private void bar(double x, double y) {
    double radius = 4.2;
    SvgPath path = new SvgPath();
    int corners =
        switch (sheet.bar().shape()) {
          case ROUND -> 48;
          case HEXAGON -> 6;
          case SQUARE -> 4;
        };
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * (i + 0.5) / corners;
      double px = x + radius * Math.cos(angle);
      double py = y + radius * Math.sin(angle);
      if (i == 0) {
        path.move(px, py);
      } else {
        path.line(px, py);
      }
    }
    path.close();
    pen.path("block", path, "fill", SvgPen.fill(HatchKind.FINE_SECTION));
  }

  private void travel() {
    double radius = 11;
    double from = -Math.PI * 0.8;
    double to = -Math.PI * 0.2;
    SvgPath arc = new SvgPath();
    for (int i = 0; i <= 24; i++) {
      double angle = from + (to - from) * i / 24;
      double x = CENTRE_X + radius * Math.cos(angle);
      double y = CENTRE_Y + radius * Math.sin(angle);
      if (i == 0) {
        arc.move(x, y);
      } else {
        arc.line(x, y);
      }
    }
    pen.path("wide", arc);
    double x = CENTRE_X + radius * Math.cos(to);
    double y = CENTRE_Y + radius * Math.sin(to);
    double ux = -Math.sin(to);
    double uy = Math.cos(to);
    Arrow.draw(pen, x - 4 * ux, y - 4 * uy, x + ux, y + uy);
    pen.text("soft", CENTRE_X, CENTRE_Y + 1, 2.6, Anchor.MIDDLE, "travel");
  }

  private DrumCard card(Position position) {
    PositionTimeline time = sheet.timeline().positions().get(position.number() - 1);
    String governs = sheet.timeline().governing() == position.number() ? ", sets the cycle" : "";
    return DrumCard.of(
        "position " + position.number() + governs,
        time,
        tools(position.number()),
        position.slides());
  }

  private PositionTools tools(int number) {
    return sheet.tools().stream()
        .filter(tools -> tools.position() == number)
        .findFirst()
        .orElse(new PositionTools(number, List.of()));
  }

  private void cards(List<DrumCard> cards, double x, Anchor anchor) {
    double room = HEIGHT_MM - 60;
    double all = cards.stream().mapToDouble(DrumCard::heightMm).sum();
    double gap = cards.size() < 2 ? 0 : Math.min(22, (room - all) / (cards.size() - 1));
    double y = 20 + Math.max(0, (room - all - gap * (cards.size() - 1)) / 2);
    for (DrumCard card : cards) {
      card.draw(pen, x, y, CARD_MM, anchor);
      y += card.heightMm() + Math.max(1, gap);
    }
  }

  private void back() {
    PositionTimeline back = sheet.timeline().back();
    drumline.shop.machine.PickUp pickUp = sheet.machine().pickUp();
    if (back != null && pickUp != null) {
      PositionTools tools = tools(count + 1);
      DrumCard.of("pick-up spindle and back-working", back, tools, pickUp.slides())
          .draw(pen, CENTRE_X, 170, 90, Anchor.MIDDLE);
    }
  }

  private void foot() {
    Box room = new Box(20, HEIGHT_MM - 10 - 15, WIDTH_MM - 30, 15);
    pen.line("wide", room.x(), room.y(), room.right(), room.y());
    pen.text("bold", room.x() + 3, room.y() + 6, 4.2, Anchor.START, sheet.part().name());
    pen.text("soft", room.x() + 3, room.y() + 11, 2.6, Anchor.START, sheet.machine().title());
    pen.text("bold", room.right() - 3, room.y() + 6, 3.2, Anchor.END, "drum from the front");
    pen.text(
        "soft",
        room.right() - 3,
        room.y() + 10,
        2.3,
        Anchor.END,
        "block outside: slide beside the spindle · square: slide facing it · dots: driven tool");
    pen.text(
        "soft",
        room.right() - 3,
        room.y() + 13.2,
        2.3,
        Anchor.END,
        "drawn clockwise from the top; place and turning sense: see the machine maker's drawing");
  }

  private static String words(List<DrumCard> left, List<DrumCard> right) {
    List<DrumCard> all = new ArrayList<>(right);
    for (int i = left.size() - 1; i >= 0; i--) {
      all.add(left.get(i));
    }
    StringBuilder words = new StringBuilder("Positions in the order of travel. ");
    for (DrumCard card : all) {
      words.append(card.title()).append(": ").append(String.join("; ", card.lines())).append(". ");
    }
    return words.toString().strip();
  }
}
