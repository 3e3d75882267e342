package drumline.cutting.guard;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The formulas know the shop's nouns and the JDK, and nothing else. */
@AnalyzeClasses(packages = "drumline.cutting", importOptions = ImportOption.DoNotIncludeTests.class)
class DependenciesTest {
  @ArchTest
  static final ArchRule ONLY_SHOP_AND_JDK =
      classes()
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage("drumline.cutting..", "drumline.shop..", "java..", "org.jspecify..");

  @ArchTest
  static final ArchRule NO_CYCLES =
      slices().matching("drumline.cutting.(*)..").should().beFreeOfCycles();
}
