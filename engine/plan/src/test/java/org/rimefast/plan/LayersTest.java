package org.rimefast.plan;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.properties.HasName;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import org.junit.jupiter.api.Test;

/** What may know what. */
class LayersTest {
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.rimefast.plan");

  @Test
  void jsonKnowsNothingOfPlansButLimitsAndPlaces() {
    ArchRuleDefinition.noClasses()
        .that()
        .resideInAPackage("org.rimefast.plan.internal.json")
        .should()
        .dependOnClassesThat(
            JavaClass.Predicates.resideInAPackage("org.rimefast.plan..")
                .and(
                    DescribedPredicate.not(
                        JavaClass.Predicates.resideInAPackage("org.rimefast.plan.internal.json")))
                .and(
                    DescribedPredicate.not(
                        HasName.Predicates.nameMatching(
                            "org\\.rimefast\\.plan\\.(PlanLimits|PlanSource.*)"))))
        .check(CLASSES);
  }

  @Test
  void theParserIsKnownToJsonOnly() {
    ArchRuleDefinition.noClasses()
        .that()
        .resideOutsideOfPackage("org.rimefast.plan.internal.json")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("com.fasterxml..")
        .check(CLASSES);
  }

  @Test
  void readingAndWritingDoNotNeedGeometry() {
    ArchRuleDefinition.noClasses()
        .that()
        .resideInAnyPackage("org.rimefast.plan", "org.rimefast.plan.internal..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("org.rimefast.plan.geometry..")
        .check(CLASSES);
  }

  @Test
  void publicClassesAreFinalOrInterfaces() {
    ArchRuleDefinition.classes()
        .that()
        .arePublic()
        .and()
        .resideInAPackage("org.rimefast.plan")
        .and()
        .areNotInterfaces()
        .and()
        .areNotEnums()
        .should()
        .haveModifier(JavaModifier.FINAL)
        .check(CLASSES);
  }
}
