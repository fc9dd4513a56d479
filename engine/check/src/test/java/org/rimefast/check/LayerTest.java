package org.rimefast.check;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "org.rimefast", importOptions = ImportOption.DoNotIncludeTests.class)
class LayerTest {
  @ArchTest
  static final ArchRule THE_LANGUAGE_KNOWS_NO_STEEL =
      noClasses()
          .that()
          .resideInAPackage("org.rimefast.lang..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.rimefast.plan..", "org.rimefast.check..");

  @ArchTest
  static final ArchRule THE_PLAN_KNOWS_NO_RULES =
      noClasses()
          .that()
          .resideInAPackage("org.rimefast.plan..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.rimefast.lang..", "org.rimefast.check..");

  @ArchTest
  static final ArchRule UNITS_STAND_ALONE =
      noClasses()
          .that()
          .resideInAPackage("org.rimefast.units..")
          .should()
          .dependOnClassesThat()
          .resideOutsideOfPackages("org.rimefast.units..", "java..", "org.jspecify..");

  @ArchTest
  static final ArchRule THE_CHECK_READS_NO_FILES_AND_NO_CLOCK =
      noClasses()
          .that()
          .resideInAPackage("org.rimefast.check..")
          // What a host may hand in to find the files of a standard.
          .and()
          .doNotBelongToAnyOf(StandardFiles.class)
          .should()
          .dependOnClassesThat()
          .haveFullyQualifiedName("java.time.Clock")
          .orShould()
          .callMethod(java.time.LocalDate.class, "now")
          .orShould()
          .callMethod(java.time.Instant.class, "now")
          .orShould()
          .dependOnClassesThat()
          .resideInAnyPackage("java.nio.file..", "java.net.http..", "java.lang.reflect..");

  @ArchTest
  static final ArchRule THE_EVALUATORS_DO_NOT_KNOW_EACH_OTHER =
      slices().matching("org.rimefast.check.internal.(*)..").should().notDependOnEachOther();
}
