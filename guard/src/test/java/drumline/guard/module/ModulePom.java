package drumline.guard.module;

import drumline.guard.tree.RuleTable;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * What a module's pom says about modules and libraries.
 *
 * @param module name of its folder
 * @param project root element of the file
 */
record ModulePom(String module, Element project) {

  /** Reads the text of a pom. */
  static ModulePom parse(String module, String text) {
    try {
      return new ModulePom(
          module,
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)))
              .getDocumentElement());
    } catch (ParserConfigurationException | SAXException | IOException e) {
      throw new IllegalArgumentException("pom of " + module, e);
    }
  }

  /** Modules that its main classes are compiled with. */
  Set<String> usedModules() {
    Set<String> used = new TreeSet<>();
    for (Element dependency : dependencies()) {
      if (word(dependency, "groupId").equals("drumline")
          && !Set.of("test", "runtime").contains(word(dependency, "scope"))) {
        used.add(word(dependency, "artifactId"));
      }
    }
    return used;
  }

  /** Modules that it names in any scope. */
  Set<String> namedModules() {
    Set<String> named = new TreeSet<>();
    for (Element dependency : dependencies()) {
      if (word(dependency, "groupId").equals("drumline")) {
        named.add(word(dependency, "artifactId"));
      }
    }
    return named;
  }

  /** Groups of restricted libraries that it says are its own. */
  List<String> ownLibraries() {
    for (Element properties : children(project, "properties")) {
      String own = word(properties, "house.libraries");
      if (!own.isEmpty()) {
        return List.of(own.split(",", -1));
      }
    }
    return List.of();
  }

  /** What breaks the arrows or the list of libraries; empty if nothing does. */
  List<String> breaches(Map<String, Set<String>> allowed) {
    List<String> breaches = new ArrayList<>();
    if (!allowed.containsKey(module)) {
      return List.of(module + " is not in modules.txt");
    }
    for (String used : usedModules()) {
      if (!allowed.get(module).contains(used)) {
        breaches.add(module + "/pom.xml: may not use " + used);
      }
    }
    for (String group : ownLibraries()) {
      boolean listed =
          RuleTable.rows("libraries.txt").stream()
              .anyMatch(
                  row -> row.get(0).equals(group) && (row.get(2) + ".").startsWith(module + "."));
      if (!listed) {
        breaches.add(module + "/pom.xml: house.libraries names " + group);
      }
    }
    return breaches;
  }

  /** Texts of all elements with a name, anywhere in the file. */
  Set<String> all(String name) {
    Set<String> texts = new TreeSet<>();
    NodeList nodes = project.getElementsByTagName(name);
    for (int i = 0; i < nodes.getLength(); i++) {
      texts.add(nodes.item(i).getTextContent().strip());
    }
    return texts;
  }

  private List<Element> dependencies() {
    return children(project, "dependencies").stream()
        .flatMap(list -> children(list, "dependency").stream())
        .toList();
  }

  private static String word(Element parent, String name) {
    return children(parent, name).stream()
        .findFirst()
        .map(element -> element.getTextContent().strip())
        .orElse("");
  }

  private static List<Element> children(Element parent, String name) {
    List<Element> found = new ArrayList<>();
    for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element element && element.getTagName().equals(name)) {
        found.add(element);
      }
    }
    return found;
  }
}
