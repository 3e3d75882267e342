package drumline.sheets.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

class SheetsDependsTest {
  private final JavaClasses classes =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("drumline.sheets");

  @Test
  void writesWhatOthersWorkedOut() {
    classes()
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage(
            "drumline.sheets..", "drumline.economics..", "drumline.shop..", "j2html..", "java..")
        .check(classes);
  }

  @Test
  void contentKnowsNoPage() {
    noClasses()
        .that()
        .resideInAPackage("drumline.sheets.content..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("j2html..", "drumline.sheets.html..", "drumline.sheets.text..")
        .check(classes);
  }
}
