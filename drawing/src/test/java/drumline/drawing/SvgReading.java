package drumline.drawing;

import drumline.drawing.svg.Box;
import drumline.drawing.svg.TextWidth;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Reads a drawing back with the JDK's XML parser. */
public final class SvgReading {

  /** A text and the room that its letters take. */
  public record TextBox(String text, Box box) {}

  private SvgReading() {}

  public static Element parse(String svg) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      factory.setNamespaceAware(true);
      Document document =
          factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
      return document.getDocumentElement();
    } catch (Exception e) {
      throw new AssertionError("not well-formed: " + e.getMessage(), e);
    }
  }

  public static List<Element> all(Element root, String tag) {
    NodeList nodes = root.getElementsByTagName(tag);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  public static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute).replace("mm", ""));
  }

  public static Box box(Element rect) {
    return new Box(
        number(rect, "x"), number(rect, "y"), number(rect, "width"), number(rect, "height"));
  }

  /** Boxes of the letters: from a fifth below the base line to the height of capitals. */
  public static List<TextBox> texts(Element root) {
    return all(root, "text").stream().map(SvgReading::textBox).toList();
  }

  public static TextBox textBox(Element text) {
    String words = text.getTextContent();
    double size = number(text, "font-size");
    boolean isBold = text.getAttribute("class").contains("bold");
    double width = isBold ? TextWidth.bold(words, size) : TextWidth.of(words, size);
    double x = number(text, "x");
    double y = number(text, "y");
    double share =
        switch (text.getAttribute("text-anchor")) {
          case "start" -> 0;
          case "middle" -> 0.5;
          default -> 1;
        };
    double up = 0.72 * size;
    double down = 0.2 * size;
    Box box =
        text.getAttribute("transform").startsWith("rotate(-90")
            ? new Box(x - up, y - width * (1 - share), up + down, width)
            : new Box(x - width * share, y - up, width, up + down);
    return new TextBox(words, box);
  }
}
