package drumline.guard.module;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import org.junit.jupiter.api.Test;

class ArrowsTest {
  private static final String CROOKED = "drumline.guard.crooked";

  private static final JavaClasses PROGRAM =
      new ClassFileImporter()
          .withImportOption(location -> !location.contains("/guard/target/"))
          .importPackages("drumline");
  private static final JavaClasses CROOKED_CLASSES =
      new ClassFileImporter().importPackages(CROOKED + "..");

  private static ArchRule noCycles(String root) {
    return slices().matching(root + ".(**)").should().beFreeOfCycles();
  }

  @Test
  void modulesUseOnlyWhatTheirArrowsAllow() {
    assertThat(PROGRAM.contain("drumline.cli.Main")).isTrue();
    assertThat(PROGRAM.contain("drumline.shop.problem.Problem")).isTrue();
    assertThat(new Arrows("drumline").breaches(PROGRAM)).isEmpty();
  }

  @Test
  void packagesFormNoCycle() {
    noCycles("drumline").check(PROGRAM);
  }

  @Test
  void eachCrookedClassIsNamedWithWhatItMayNotUse() {
    assertThat(new Arrows(CROOKED).breaches(CROOKED_CLASSES))
        .containsExactlyInAnyOrder(
            CROOKED + ".shop.Bolt uses " + CROOKED + ".cutting.Chip",
            CROOKED + ".cutting.Chip uses java.sql.Connection",
            CROOKED + ".planner.audit.Auditor uses " + CROOKED + ".planner.cpsat.Solver",
            CROOKED + ".app.PlanInquiry uses " + CROOKED + ".planner.cpsat.Solver",
            CROOKED + ".app.PlanInquiry uses com.google.ortools.sat.CpSolver");
  }

  @Test
  void aPackageOutsideTheTableIsNamed() {
    assertThat(new Arrows("drumline.guard").breaches(CROOKED_CLASSES))
        .contains(CROOKED + ".shop.Bolt is in no module of modules.txt");
  }

  @Test
  void crookedPackagesFormACycle() {
    assertThatThrownBy(() -> noCycles(CROOKED).check(CROOKED_CLASSES))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("Cycle detected: Slice cutting")
        .hasMessageContaining("Slice shop");
  }
}
