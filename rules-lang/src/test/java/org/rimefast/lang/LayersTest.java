package org.rimefast.lang;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

final class LayersTest {
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.rimefast.lang");

  @Test
  void onlyTheGrammarKnowsTheParserGenerator() {
    noClasses()
        .that()
        .resideOutsideOfPackage("..internal.grammar..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("org.antlr..")
        .check(CLASSES);
  }

  @Test
  void theGrammarHasOneDoor() {
    noClasses()
        .that()
        .resideOutsideOfPackage("..internal.grammar..")
        .should()
        .dependOnClassesThat(
            com.tngtech.archunit.base.DescribedPredicate.describe(
                "hidden classes of the grammar",
                (com.tngtech.archunit.core.domain.JavaClass c) ->
                    c.getPackageName().endsWith(".internal.grammar")
                        && !c.getName().contains("StatementReader")))
        .check(CLASSES);
  }

  @Test
  void onlyTheCompilersTheFormatterAndTheParaphraseUseInternalPackages() {
    noClasses()
        .that()
        .resideOutsideOfPackage("..internal..")
        .and()
        // Tools ask the compiler's own readers.
        .resideOutsideOfPackage("org.rimefast.lang.tooling")
        .and()
        .doNotHaveSimpleName("RuleCompiler")
        .and()
        .doNotHaveSimpleName("RuleFormatter")
        .and()
        .doNotHaveSimpleName("Paraphrase")
        .and()
        .doNotHaveSimpleName("CaseCompiler")
        .and()
        .doNotHaveSimpleName("WaiverCompiler")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("..internal..")
        .check(CLASSES);
  }

  @Test
  void packagesHaveNoCycles() {
    slices().matching("org.rimefast.(lang..)").should().beFreeOfCycles().check(CLASSES);
  }

  @Test
  void publicTypesOutsideInternalPackagesAreFinalOrInterfaces() {
    classes()
        .that()
        .resideOutsideOfPackage("..internal..")
        .and()
        .arePublic()
        .and()
        .areNotInterfaces()
        .should()
        .haveModifier(com.tngtech.archunit.core.domain.JavaModifier.FINAL)
        .check(CLASSES);
  }

  @Test
  void nothingReachesForClockFilesOrLocale() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.io..", "java.nio.file..", "java.net..")
        .orShould()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.util.Random")
        .orShould()
        .dependOnClassesThat(
            com.tngtech.archunit.base.DescribedPredicate.describe(
                "classes of java.time but dates as such",
                (com.tngtech.archunit.core.domain.JavaClass c) ->
                    c.getPackageName().startsWith("java.time")
                        && !c.getSimpleName().equals("LocalDate")
                        && !c.getSimpleName().equals("ChronoLocalDate")
                        && !c.getSimpleName().equals("DateTimeException")))
        .orShould()
        .callMethod(java.time.LocalDate.class, "now")
        .check(CLASSES);
  }
}
