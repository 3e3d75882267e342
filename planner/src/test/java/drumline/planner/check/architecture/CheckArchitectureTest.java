package drumline.planner.check.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.belongToAnyOf;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import drumline.cycle.spindle.GripDiameters;

@AnalyzeClasses(packages = "drumline.planner", importOptions = DoNotIncludeTests.class)
class CheckArchitectureTest {
  @ArchTest
  static final ArchRule timelineAuditWorksEverythingOutItself =
      noClasses()
          .that()
          .resideInAPackage("..planner.check..")
          .should()
          .dependOnClassesThat(
              resideInAnyPackage(
                      "..cycle.clock..",
                      "..cycle.spindle..",
                      "..planner.model..",
                      "..planner.cpsat..",
                      "..planner.seed..",
                      "..planner.bound..",
                      "..planner.tables..",
                      "..planner.audit..",
                      "..planner.api..",
                      "..planner.translate..")
                  .and(not(belongToAnyOf(GripDiameters.class))));
}
