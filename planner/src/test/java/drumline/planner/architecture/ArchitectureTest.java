package drumline.planner.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "drumline.planner", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {
  @ArchTest
  static final ArchRule solverOnlyInCpsat =
      noClasses()
          .that()
          .resideOutsideOfPackage("..planner.cpsat..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("com.google.ortools..");

  @ArchTest
  static final ArchRule auditSharesNothingWithTheSearch =
      noClasses()
          .that()
          .resideInAPackage("..planner.audit..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "..planner.cpsat..",
              "..planner.seed..",
              "..planner.bound..",
              "..planner.tables..",
              "..planner.api..");

  @ArchTest
  static final ArchRule modelStandsAlone =
      noClasses()
          .that()
          .resideInAPackage("..planner.model..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "..planner.cpsat..",
              "..planner.seed..",
              "..planner.bound..",
              "..planner.tables..",
              "..planner.audit..",
              "..planner.api..");

  @ArchTest
  static final ArchRule noCircles =
      slices().matching("drumline.planner.(*)..").should().beFreeOfCycles();
}
