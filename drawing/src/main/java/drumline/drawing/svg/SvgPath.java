package drumline.drawing.svg;

/** The {@code d} of a path, point by point. */
public final class SvgPath {

  private final StringBuilder d = new StringBuilder();

  /** Begins a new line here. */
  public SvgPath move(double x, double y) {
    return point('M', x, y);
  }

  /** Straight to here. */
  public SvgPath line(double x, double y) {
    return point('L', x, y);
  }

  /** A curve with one control point to here. */
  public SvgPath curve(double controlX, double controlY, double x, double y) {
    point('Q', controlX, controlY);
    d.append(' ').append(SvgNumber.text(x)).append(' ').append(SvgNumber.text(y));
    return this;
  }

  /** Back to where the line began. */
  public SvgPath close() {
    d.append('Z');
    return this;
  }

  /** Whether nothing is drawn. */
  public boolean isEmpty() {
    return d.isEmpty();
  }

  private SvgPath point(char command, double x, double y) {
    d.append(command).append(SvgNumber.text(x)).append(' ').append(SvgNumber.text(y));
    return this;
  }

  @Override
  public String toString() {
    return d.toString();
  }
}
