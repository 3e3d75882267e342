package drumline.economics.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

class EconomicsDependsTest {
  private final JavaClasses classes =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("drumline.economics");

  @Test
  void knowsTheNounsAndTheTimelineOnly() {
    classes()
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage(
            "drumline.economics..",
            "drumline.shop..",
            "drumline.cycle.timeline..",
            "java..",
            "org.jspecify.annotations..")
        .check(classes);
  }

  @Test
  void packagesDoNotGoInCircles() {
    slices().matching("drumline.economics.(*)..").should().beFreeOfCycles().check(classes);
  }
}
