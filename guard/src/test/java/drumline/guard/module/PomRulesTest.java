package drumline.guard.module;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.guard.tree.ProjectTree;
import drumline.guard.tree.RuleTable;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class PomRulesTest {

  private static ModulePom pom(String module) {
    return ModulePom.parse(module, ProjectTree.read(Path.of(module, "pom.xml")));
  }

  private static Set<String> built() {
    Set<String> modules = new TreeSet<>(pom("").all("module"));
    modules.remove("guard");
    return modules;
  }

  private static ModulePom crooked(String module, String properties, String dependency) {
    return ModulePom.parse(
        module,
        "<project><properties>"
            + properties
            + "</properties><dependencies><dependency>"
            + dependency
            + "</dependency></dependencies></project>");
  }

  @Test
  void everyModuleFollowsItsArrowsAndOwnsItsLibraries() {
    assertThat(built()).contains("shop", "cli");
    assertThat(built().stream().flatMap(m -> pom(m).breaches(Arrows.allowed()).stream())).isEmpty();
  }

  @Test
  void everyModuleWithAPomIsBuilt() {
    Set<String> folders = new TreeSet<>(ProjectTree.moduleFolders());
    folders.remove("guard");
    assertThat(built()).as("modules of the root pom, against the folders").isEqualTo(folders);
  }

  @Test
  void theGuardSeesEveryModule() {
    assertThat(pom("guard").namedModules())
        .as("dependencies in guard/pom.xml, against the modules of the root pom")
        .isEqualTo(built());
  }

  @Test
  void mavenBansWhatTheTableRestricts() {
    Set<String> groups =
        RuleTable.rows("libraries.txt").stream()
            .map(row -> row.get(0))
            .filter(group -> !group.equals("JDK"))
            .collect(Collectors.toSet());
    assertThat(pom("").all("exclude")).as("excludes of the root pom").isEqualTo(groups);
  }

  @Test
  void anArrowAgainstTheTableIsNamed() {
    String planner = "<groupId>drumline</groupId><artifactId>planner</artifactId>";
    assertThat(crooked("shop", "", planner).breaches(Arrows.allowed()))
        .containsExactly("shop/pom.xml: may not use planner");
    assertThat(crooked("shop", "", planner + "<scope>test</scope>").breaches(Arrows.allowed()))
        .isEmpty();
    assertThat(crooked("app", "", planner).breaches(Arrows.allowed())).isEmpty();
  }

  @Test
  void aLibraryOfAnotherModuleIsNamed() {
    String own = "<house.libraries>com.google.ortools</house.libraries>";
    assertThat(crooked("economics", own, "").breaches(Arrows.allowed()))
        .containsExactly("economics/pom.xml: house.libraries names com.google.ortools");
    assertThat(crooked("planner", own, "").breaches(Arrows.allowed())).isEmpty();
  }

  @Test
  void aModuleThatTheTableDoesNotKnowIsNamed() {
    assertThat(crooked("gossip", "", "").breaches(Arrows.allowed()))
        .containsExactly("gossip is not in modules.txt");
  }
}
