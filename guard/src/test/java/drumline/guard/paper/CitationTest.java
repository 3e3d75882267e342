package drumline.guard.paper;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.guard.tree.ProjectTree;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** SOURCES.md and GLOSSARY.md against the tree, both ways. */
class CitationTest {
  private static final Pattern TYPE =
      Pattern.compile("\\b(?:class|record|enum|interface) ([A-Z]\\w*)");

  private static String page(String name) {
    return ProjectTree.read(Path.of(name));
  }

  private static Stream<String> files() {
    return ProjectTree.textFiles().stream().map(file -> file.toString().replace('\\', '/'));
  }

  private static List<Citation> citations() {
    return files().flatMap(file -> Citation.in(file, page(file)).stream()).toList();
  }

  private static Set<String> types() {
    Set<String> types = new HashSet<>(ProjectTree.moduleFolders());
    files()
        .filter(file -> file.endsWith(".java") && file.contains("/src/main/"))
        .forEach(
            file ->
                TYPE.matcher(page(file))
                    .results()
                    .map((MatchResult found) -> found.group(1))
                    .forEach(type -> types.add(file.substring(0, file.indexOf('/')) + "." + type)));
    return types;
  }

  @Test
  void everyCitationHasItsSource() {
    List<Citation> citations = citations();
    assertThat(citations).hasSizeGreaterThan(400);
    assertThat(SourceList.of(page("SOURCES.md")).unlisted(citations)).isEmpty();
  }

  @Test
  void everySourceIsCited() {
    assertThat(SourceList.of(page("SOURCES.md")).uncited(citations())).isEmpty();
  }

  @Test
  void theListOfSourcesIsWhole() {
    SourceList sources = SourceList.of(page("SOURCES.md"));
    assertThat(sources.table().rows()).hasSizeGreaterThan(50);
    assertThat(sources.repeated()).isEmpty();
    assertThat(sources.table().gaps(4)).isEmpty();
  }

  @Test
  void everyWordOfTheGlossaryHasItsType() {
    Glossary glossary = Glossary.of(page("GLOSSARY.md"));
    assertThat(glossary.table().rows()).hasSizeGreaterThan(50);
    assertThat(glossary.astray(types())).isEmpty();
    assertThat(glossary.disordered()).isEmpty();
    assertThat(glossary.table().gaps(3)).isEmpty();
  }

  /** The same rules over samples that break them, and their nearest neighbours that do not. */
  @Nested
  class Bites {
    private final SourceList sources =
        SourceList.of(
            """
            # Sources
            ## Books
            | key | work | used for | how far read |
            |---|---|---|---|
            | [OAK] | Oak, 1999 | chips | page 3 |
            | [ISO-9-1.2] | Ash, 2001 | forces |  |
            | [OAK] | Oak, 1999 | chips | page 3 |
            | no key | words | words | words |
            ## Background
            | key | work | used for | how far read |
            |---|---|---|---|
            | [ELM] | Elm, 2003 | nothing yet | abstract |
            """);

    private List<Citation> cite(String file, String text) {
      return Citation.in(file, text);
    }

    @Test
    void keysInComments() {
      String text =
          "/**\n * Force.\n * Source: [OAK] page 3,\n * [YEW].\n */\n// as [ISO-9-1.2]\nclass A {}";
      assertThat(cite("shop/A.java", text))
          .containsExactly(
              new Citation("shop/A.java", 3, "OAK"),
              new Citation("shop/A.java", 4, "YEW"),
              new Citation("shop/A.java", 6, "ISO-9-1.2"));
      assertThat(sources.unlisted(cite("shop/A.java", text)))
          .containsExactly("shop/A.java:4: [YEW] is not in SOURCES.md");
    }

    @Test
    void bracketsThatAreNoKeys() {
      String text =
          "class A { String a = \"// [YEW] \\\" [YEW]\"; char b = '\"'; int c = d[YEW];\n"
              + "String e = \"\"\"\n/* [YEW] */\"\"\"; } // a list [i], [A], [Y-], [Yew], [A-Z]";
      assertThat(cite("shop/A.java", text)).isEmpty();
      assertThat(cite("README.md", "[YEW]")).isEmpty();
    }

    @Test
    void keysInTables() {
      assertThat(sources.unlisted(cite("a.csv", "# source: [OAK] p. 3\n1;2;[YEW] p. 4")))
          .containsExactly("a.csv:2: [YEW] is not in SOURCES.md");
      assertThat(sources.unlisted(cite("a.yaml", "a: 1\nsource: \"[YEW] group 1\"")))
          .containsExactly("a.yaml:2: [YEW] is not in SOURCES.md");
      assertThat(sources.unlisted(cite("a.tsv", "a\t[YEW]"))).hasSize(1);
      assertThat(sources.unlisted(cite("a.yaml", "source: \"[ELM], from memory\""))).isEmpty();
    }

    @Test
    void sourcesThatNothingCites() {
      assertThat(sources.uncited(cite("a.csv", "[OAK]")))
          .containsExactly("SOURCES.md:6: [ISO-9-1.2] is cited nowhere");
      assertThat(sources.uncited(cite("a.csv", "[OAK] [ISO-9-1.2]"))).isEmpty();
    }

    @Test
    void rowsThatAreTwiceOrNotFilled() {
      assertThat(sources.repeated()).containsExactly("SOURCES.md:7: [OAK] stands twice");
      assertThat(sources.table().gaps(4)).containsExactly("SOURCES.md:6: wants 4 filled cells");
    }

    @Test
    void wordsThatLeadNowhere() {
      Glossary glossary =
          Glossary.of(
              """
              | word | meaning | where |
              |---|---|---|
              | drum | carries the spindles | `Machine` (shop), `cycle` |
              | collet | grips the bar | `Gripper` (shop) |
              | kerf | width of the cut | the cut-off |
              | pin | fixed by hand | `Pin` (planner) |
              """);
      assertThat(glossary.astray(Set.of("shop.Machine", "cycle", "shop.Pin")))
          .containsExactly(
              "GLOSSARY.md:4: shop.Gripper is not in the tree",
              "GLOSSARY.md:5: wants `Type` (module) or `module`, found the cut-off",
              "GLOSSARY.md:6: planner.Pin is not in the tree");
      assertThat(glossary.disordered()).containsExactly("GLOSSARY.md:4: collet stands behind drum");
    }
  }
}
