package drumline.step.brep;

import drumline.step.space.Frame;
import drumline.step.space.Vec;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** Text of an exchange file: instances, units, product structure, in any order. */
public final class StepText {
  private final List<String> lines = new ArrayList<>();
  private final Style style;

  /** Units a file is written in. */
  public enum Lengths {
    MILLIMETRE(1),
    INCH(25.4),
    METRE(1000);

    private final double mm;

    Lengths(double mm) {
      this.mm = mm;
    }
  }

  /** Schemas a file may follow. */
  public enum Schema {
    CONFIG_CONTROL_DESIGN,
    AUTOMOTIVE_DESIGN,
    AP242_MANAGED_MODEL_BASED_3D_ENGINEERING_MIM_LF
  }

  /**
   * How a file is written.
   *
   * @param lengths unit of length
   * @param inDegrees whether angles are in degrees
   * @param schema its schema
   * @param isAssembly whether the piece is placed in an assembly
   * @param place where the piece lies in the file's own space
   * @param shuffle seed by which instances are shuffled, 0 for none
   */
  public record Style(
      Lengths lengths,
      boolean inDegrees,
      Schema schema,
      boolean isAssembly,
      Frame place,
      long shuffle) {

    /** Millimetres, radians, at the origin. */
    public static Style plain() {
      Frame place = Frame.of(Vec.ZERO, new Vec(0, 0, 1), new Vec(1, 0, 0));
      return new Style(Lengths.MILLIMETRE, false, Schema.AUTOMOTIVE_DESIGN, false, place, 0);
    }

    /** Anything, by chance. */
    public static Style random(Random random) {
      Vec axis = new Vec(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
      Vec near = new Vec(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
      Vec origin =
          new Vec(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).times(200);
      return new Style(
          List.of(Lengths.values()).get(random.nextInt(3)),
          random.nextBoolean(),
          List.of(Schema.values()).get(random.nextInt(3)),
          random.nextInt(3) == 0,
          Frame.of(origin, axis, near),
          1 + random.nextInt(1000));
    }
  }

  public StepText(Style style) {
    this.style = style;
  }

  /** Adds an instance; gives its reference, such as {@code #12}. */
  public String add(String format, Object... values) {
    lines.add(String.format(Locale.ROOT, format, values));
    return "#" + lines.size();
  }

  public String length(double mm) {
    return real(mm / style.lengths().mm);
  }

  public String angle(double rad) {
    return real(style.inDegrees() ? Math.toDegrees(rad) : rad);
  }

  /** A number as the standard wants it: with a full stop. */
  public static String real(double value) {
    String text = String.format(Locale.ROOT, "%.12E", value);
    return text.replaceFirst("0+E", "0E");
  }

  public static String flag(boolean value) {
    return value ? ".T." : ".F.";
  }

  public String point(Vec local) {
    Vec p = style.place().world(local);
    return add("CARTESIAN_POINT('',(%s,%s,%s))", length(p.x()), length(p.y()), length(p.z()));
  }

  public String direction(Vec local) {
    Vec d = style.place().world(local).minus(style.place().origin());
    return add("DIRECTION('',(%s,%s,%s))", real(d.x()), real(d.y()), real(d.z()));
  }

  public String placement(Vec origin, Vec z, Vec x) {
    return add("AXIS2_PLACEMENT_3D('',%s,%s,%s)", point(origin), direction(z), direction(x));
  }

  public String axis1(Vec origin, Vec z) {
    return add("AXIS1_PLACEMENT('',%s,%s)", point(origin), direction(z));
  }

  public String vertex(Vec p) {
    return add("VERTEX_POINT('',%s)", point(p));
  }

  public String line(Vec from, Vec to) {
    String vector = add("VECTOR('',%s,%s)", direction(to.minus(from).unit()), length(7));
    return add("LINE('',%s,%s)", point(from), vector);
  }

  /** Closes the file around a list of faces. */
  public byte[] file(List<String> faces) {
    String shell = add("CLOSED_SHELL('',(%s))", String.join(",", faces));
    String solid = add("MANIFOLD_SOLID_BREP('body',%s)", shell);
    product(solid);
    StringBuilder text = new StringBuilder("ISO-10303-21;\nHEADER;\n/* a comment; 'with' #1 */\n");
    text.append("FILE_DESCRIPTION((''),'2;1');\n");
    text.append("FILE_NAME('piece','2026-01-01T00:00:00',(''),(''),'','','');\n");
    text.append("FILE_SCHEMA(('").append(style.schema()).append("'));\nENDSEC;\nDATA;\n");
    List<String> numbered = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      numbered.add("#" + (i + 1) + "=" + lines.get(i) + ";\n");
    }
    if (style.shuffle() != 0) {
      Collections.shuffle(numbered, new Random(style.shuffle()));
    }
    numbered.forEach(text::append);
    text.append("ENDSEC;\nEND-ISO-10303-21;\n");
    return text.toString().getBytes(StandardCharsets.ISO_8859_1);
  }

  private String context() {
    String mm = add("(LENGTH_UNIT() NAMED_UNIT(*) SI_UNIT(.MILLI.,.METRE.))");
    String unit =
        switch (style.lengths()) {
          case MILLIMETRE -> mm;
          case METRE -> add("(LENGTH_UNIT() NAMED_UNIT(*) SI_UNIT($,.METRE.))");
          case INCH -> {
            String size = add("LENGTH_MEASURE_WITH_UNIT(LENGTH_MEASURE(25.4),%s)", mm);
            String dim = add("DIMENSIONAL_EXPONENTS(1.,0.,0.,0.,0.,0.,0.)");
            yield add("(CONVERSION_BASED_UNIT('INCH',%s) LENGTH_UNIT() NAMED_UNIT(%s))", size, dim);
          }
        };
    String radian = add("(NAMED_UNIT(*) PLANE_ANGLE_UNIT() SI_UNIT($,.RADIAN.))");
    String angle = radian;
    if (style.inDegrees()) {
      String size =
          add(
              "PLANE_ANGLE_MEASURE_WITH_UNIT(PLANE_ANGLE_MEASURE(0.017453292519943295),%s)",
              radian);
      String dim = add("DIMENSIONAL_EXPONENTS(0.,0.,0.,0.,0.,0.,0.)");
      angle =
          add("(CONVERSION_BASED_UNIT('DEGREE',%s) NAMED_UNIT(%s) PLANE_ANGLE_UNIT())", size, dim);
    }
    String solidAngle = add("(NAMED_UNIT(*) SI_UNIT($,.STERADIAN.) SOLID_ANGLE_UNIT())");
    return add(
        "(GEOMETRIC_REPRESENTATION_CONTEXT(3) GLOBAL_UNIT_ASSIGNED_CONTEXT((%s,%s,%s))"
            + " REPRESENTATION_CONTEXT('','3D'))",
        unit, angle, solidAngle);
  }

  private void product(String solid) {
    String context = context();
    String origin = placement(Vec.ZERO, new Vec(0, 0, 1), new Vec(1, 0, 0));
    String brep = add("ADVANCED_BREP_SHAPE_REPRESENTATION('',(%s,%s),%s)", origin, solid, context);
    String application = add("APPLICATION_CONTEXT('mechanical design')");
    String definition = definition(application, "P-17", "B\\X2\\00FC\\X0\\chse ''A''");
    String shape = add("PRODUCT_DEFINITION_SHAPE('','',%s)", definition);
    if (!style.isAssembly()) {
      add("SHAPE_DEFINITION_REPRESENTATION(%s,%s)", shape, brep);
      return;
    }
    String own = add("SHAPE_REPRESENTATION('',(%s),%s)", origin, context);
    add("SHAPE_REPRESENTATION_RELATIONSHIP('','',%s,%s)", own, brep);
    add("SHAPE_DEFINITION_REPRESENTATION(%s,%s)", shape, own);
    String top = definition(application, "ASM", "assembly");
    String topShape = add("PRODUCT_DEFINITION_SHAPE('','',%s)", top);
    String moved = placement(new Vec(9, -4, 2), new Vec(1, 0, 0), new Vec(0, 1, 0));
    String topRep = add("SHAPE_REPRESENTATION('',(%s,%s),%s)", origin, moved, context);
    add("SHAPE_DEFINITION_REPRESENTATION(%s,%s)", topShape, topRep);
    String use = add("NEXT_ASSEMBLY_USAGE_OCCURRENCE('1','','',%s,%s,$)", top, definition);
    String useShape = add("PRODUCT_DEFINITION_SHAPE('','',%s)", use);
    String change = add("ITEM_DEFINED_TRANSFORMATION('','',%s,%s)", origin, moved);
    String relation =
        add(
            "(REPRESENTATION_RELATIONSHIP('','',%s,%s)"
                + " REPRESENTATION_RELATIONSHIP_WITH_TRANSFORMATION(%s)"
                + " SHAPE_REPRESENTATION_RELATIONSHIP())",
            own, topRep, change);
    add("CONTEXT_DEPENDENT_SHAPE_REPRESENTATION(%s,%s)", relation, useShape);
  }

  private String definition(String application, String id, String name) {
    String productContext = add("PRODUCT_CONTEXT('',%s,'mechanical')", application);
    String product = add("PRODUCT('%s','%s','',(%s))", id, name, productContext);
    String formation = add("PRODUCT_DEFINITION_FORMATION('','',%s)", product);
    String stage = add("PRODUCT_DEFINITION_CONTEXT('part definition',%s,'design')", application);
    return add("PRODUCT_DEFINITION('design','',%s,%s)", formation, stage);
  }
}
