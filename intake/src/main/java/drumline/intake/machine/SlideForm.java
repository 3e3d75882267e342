package drumline.intake.machine;

import drumline.intake.form.Block;
import drumline.intake.form.Field;
import drumline.intake.form.Form;
import drumline.intake.form.Range;
import drumline.intake.form.Words;
import drumline.intake.text.Node;
import drumline.shop.machine.Axis;
import drumline.shop.machine.Equipment;
import drumline.shop.machine.Fitting;
import drumline.shop.machine.Position;
import drumline.shop.machine.SlideKind;
import drumline.shop.machine.ToolSlide;
import drumline.shop.quantity.QuantityKind;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reads a machine's types of slides, and the slides at its positions that are of these types. */
public final class SlideForm {

  /** Keys of a type of slide. */
  public static final Form FORM =
      Form.of(
          "slide type",
          "kind",
          "axes",
          "stroke",
          "rapid",
          "acceleration",
          "thrust",
          "seats",
          "tool-shift",
          "equipment");

  private final Map<String, ToolSlide> types = new LinkedHashMap<>();
  private final Set<String> ids = new HashSet<>();

  private SlideForm() {}

  /** Reads the types of slides of a machine. */
  static SlideForm read(Block machine) {
    SlideForm form = new SlideForm();
    for (Field.Named named : machine.require("slide-types").map(Field::named).orElse(List.of())) {
      named.field().block(FORM).ifPresent(b -> form.types.put(named.name(), type(named.name(), b)));
    }
    return form;
  }

  private static ToolSlide type(String name, Block block) {
    return new ToolSlide(
        name,
        block.choice("kind", SlideKind.class),
        axes(block),
        block.quantity("stroke", QuantityKind.LENGTH, Range.POSITIVE),
        block.quantity("rapid", QuantityKind.RAPID, Range.POSITIVE),
        block.quantity("acceleration", QuantityKind.ACCELERATION, Range.POSITIVE),
        block.quantity("thrust", QuantityKind.FORCE, Range.POSITIVE),
        (int) Math.round(block.number("seats", Range.between(1, 40))),
        block.quantity("tool-shift", QuantityKind.TIME, Range.NOT_NEGATIVE),
        equipment(block));
  }

  private static Set<Axis> axes(Block block) {
    Set<Axis> axes = EnumSet.noneOf(Axis.class);
    for (Field field : block.items("axes")) {
      field.choice(Axis.class).ifPresent(axes::add);
    }
    if (axes.isEmpty()) {
      block.report("key-missing", "no axes", "one or more of x, y, z under \"axes\"", "");
    }
    return axes;
  }

  private static Map<Equipment, Fitting> equipment(Block block) {
    Map<Equipment, Fitting> fittings = new EnumMap<>(Equipment.class);
    for (Field.Named named : block.find("equipment").map(Field::named).orElse(List.of())) {
      MachineForm.equipment(named)
          .ifPresent(e -> named.field().choice(Fitting.class).ifPresent(f -> fittings.put(e, f)));
    }
    return fittings;
  }

  /** The positions, each a block of slide names with their types. */
  List<Position> positions(List<Field> items) {
    List<Position> positions = new ArrayList<>();
    for (Field item : items) {
      positions.add(new Position(positions.size() + 1, slides(item)));
    }
    return positions;
  }

  /** The slides in a block of slide names with their types. */
  List<ToolSlide> slides(Field field) {
    List<ToolSlide> slides = new ArrayList<>();
    for (Field.Named named : field.named()) {
      Node node = named.field().node();
      ToolSlide type = types.get(node instanceof Node.Single single ? single.text() : "");
      if (type == null) {
        List<String> known = List.copyOf(types.keySet());
        String hint = node instanceof Node.Single single ? Words.maybe(single.text(), known) : "";
        named
            .field()
            .report(
                "unknown-slide-type",
                node.words(),
                "one of the machine's slide types: " + String.join(", ", known),
                hint);
      } else if (!ids.add(named.name())) {
        named
            .field()
            .report("id-twice", "the slide \"" + named.name() + "\" again", "each name once", "");
      } else {
        slides.add(named(type, named.name()));
      }
    }
    return slides;
  }

  private static ToolSlide named(ToolSlide type, String id) {
    return new ToolSlide(
        id,
        type.kind(),
        type.axes(),
        type.strokeMm(),
        type.rapidMPerMin(),
        type.accelerationMPerS2(),
        type.thrustN(),
        type.seatCount(),
        type.toolShiftS(),
        type.equipment());
  }
}
