package org.rimefast.rulesets;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.rimefast.check.CheckOptions;
import org.rimefast.check.CheckResult;
import org.rimefast.check.Checker;
import org.rimefast.check.Dictionary;
import org.rimefast.check.Finding;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.StandardLibrary;
import org.rimefast.check.SteelModules;
import org.rimefast.check.Verdict;
import org.rimefast.check.WaiverUse;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.RuleFormatter;
import org.rimefast.lang.WaiverCompilation;
import org.rimefast.lang.WaiverCompiler;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Severity;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.DiagnosticPrinter;
import org.rimefast.lang.source.SourceFinder;
import org.rimefast.lang.source.SourceText;
import org.rimefast.plan.Plan;

/** What the guide to writing a standard shows does what the guide says. */
class StandardGuideTest {
  private static final Guide GUIDE = Guide.read("writing-a-standard.md");
  private static final Dictionary DICTIONARY = SteelModules.dictionary();
  private static final RuleCompiler COMPILER = new RuleCompiler(DICTIONARY.vocabulary());

  static List<String> wholeStandards() {
    return GUIDE.texts("rime");
  }

  /** Included files are shown in the guide; standards to build on are shipped. */
  static final SourceFinder FINDER =
      new SourceFinder() {
        @Override
        public Optional<SourceText> include(String name) {
          return name.equals("doors.rime")
              ? Optional.of(new SourceText(name, GUIDE.texts("rime-part").get(0)))
              : Optional.empty();
        }

        @Override
        public Optional<SourceText> base(String name, String edition) {
          return StandardLibrary.find(name);
        }
      };

  static List<String> sentences() {
    return GUIDE.texts("rime-sentence").stream()
        .flatMap(text -> Stream.of(text.strip().split("\n\n")))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("wholeStandards")
  void aWholeStandardCompilesWithoutAWordOfWarning(String text) {
    Standard standard = standard(text);
    assertThat(standard.caution()).contains("local codes", "authority having jurisdiction");
  }

  @ParameterizedTest
  @MethodSource("sentences")
  void aSentenceIsTheSentenceOfARule(String sentence) {
    Standard standard = standard(withSentence(sentence));
    assertThat(standard.rules()).hasSize(1);
    assertThat(new Checker(DICTIONARY, standard).standard()).isEqualTo(standard);
  }

  @Test
  void aMistakeIsAnsweredAsPrinted() {
    List<Guide.Block> blocks = GUIDE.blocks();
    int mistakes = 0;
    for (int i = 0; i < blocks.size(); i++) {
      if (blocks.get(i).kind().equals("rime-error")) {
        assertThat(blocks.get(i + 1).kind()).isEqualTo("text");
        assertThat(printed(blocks.get(i).text())).isEqualTo(blocks.get(i + 1).text());
        mistakes++;
      }
    }
    assertThat(mistakes).isPositive();
    assertThat(GUIDE.texts("text")).hasSize(mistakes);
  }

  @Test
  void noBlockIsLeftUntested() {
    assertThat(GUIDE.blocks())
        .extracting(Guide.Block::kind)
        .containsOnly(
            "rime",
            "rime-waivers",
            "rime-part",
            "rime-sentence",
            "rime-error",
            "text",
            "rime-cases",
            "rime-cases-otherwise",
            "text-cases");
  }

  @Test
  void theSeveritiesAndStagesAreTheseInThisOrder() {
    List<Guide.Table> tables = GUIDE.tables("The parts of a file");
    assertThat(tables.get(1).column(0))
        .containsExactlyElementsOf(
            Arrays.stream(Severity.values()).map(severity -> "`" + severity.word() + "`").toList());
    assertThat(tables.get(2).column(0))
        .containsExactlyElementsOf(
            SteelModules.STAGES.stream().map(stage -> "`" + stage + "`").toList());
  }

  @Test
  void everyPartOfARuleThatIsListedIsRequired() {
    for (String cell : GUIDE.tables("The parts of a file").get(0).column(0)) {
      String part = Guide.code(cell).get(0);
      String without =
          withSentence("box must not touch the shell")
              .lines()
              .filter(line -> !line.startsWith("  " + part))
              .collect(Collectors.joining("\n", "", "\n"));
      assertThat(printed(without)).contains("error[missing-part]", "has no \"" + part + "\"");
    }
  }

  @Test
  void theVerdictsAreThese() {
    assertThat(GUIDE.table("What the check answers").column(0))
        .containsExactlyElementsOf(Arrays.stream(Verdict.values()).map(Verdict::words).toList());
  }

  @Test
  void aSignAndItsWordsMeanTheSame() {
    List<Condition> all = new ArrayList<>();
    for (List<String> row : GUIDE.table("Comparisons").rows()) {
      String sign = Guide.code(row.get(0)).get(0);
      String words = Guide.code(row.get(1)).get(0).replaceFirst("^is ?", "");
      Condition bySign = where("clearance " + sign + " 50 mm");
      Condition byWords = where(("clearance is " + words).strip() + " 50 mm");
      assertThat(byWords)
          .usingRecursiveComparison()
          .ignoringFieldsMatchingRegexes("(.*\\.)?span")
          .isEqualTo(bySign);
      all.add(bySign);
    }
    assertThat(all).hasSize(6).doesNotHaveDuplicates();
  }

  @Test
  void theWholeStandardFindsWhatTheGuideSays() {
    Plan plan = PlanGuideTest.completeExample();
    Standard standard = standard(wholeStandards().get(0));
    Checker checker = new Checker(DICTIONARY, standard);
    PlanFacts facts = new PlanFacts(plan, DICTIONARY);
    List<String> told = new ArrayList<>();
    for (List<String> row : GUIDE.table("A whole standard").rows()) {
      String rule = Guide.code(row.get(0)).get(0);
      String element = Guide.code(row.get(1)).get(0);
      Verdict verdict = checker.explain(rule, element, facts).verdict();
      assertThat(verdict.words()).as(rule + " " + element).isEqualTo(row.get(2));
      if (verdict != Verdict.MET && verdict != Verdict.NOT_APPLICABLE) {
        told.add(rule + " " + element);
      }
    }
    List<Finding> found =
        checker.check(facts, CheckOptions.DEFAULT).rules().stream()
            .flatMap(result -> result.findings().stream())
            .toList();
    assertThat(found)
        .extracting(finding -> finding.rule().id() + " " + finding.element().id())
        .containsExactlyInAnyOrderElementsOf(told)
        .hasSize(3);
  }

  @Test
  void theInspectItemsFindWhatTheGuideSays() {
    Standard standard =
        standard(
            wholeStandards().stream()
                .filter(text -> text.contains("\ninspect "))
                .findFirst()
                .orElseThrow());
    Checker checker = new Checker(DICTIONARY, standard);
    PlanFacts facts = new PlanFacts(PlanGuideTest.completeExample(), DICTIONARY);
    for (List<String> row : GUIDE.tables("Inspect items").get(1).rows()) {
      String item = Guide.code(row.get(0)).get(0);
      int element = facts.handleNamed(Guide.code(row.get(1)).get(0));
      assertThat(checker.explain(item, element, facts).verdict().words())
          .as(item + " " + row.get(1))
          .isEqualTo(row.get(2));
    }
    assertThat(checker.check(facts, CheckOptions.DEFAULT).unaskedReadings()).isEmpty();
  }

  @Test
  void theWaiversCoverWhatTheyName() {
    Standard standard = standard(wholeStandards().get(0));
    String text = GUIDE.texts("rime-waivers").get(0);
    WaiverCompilation compiled =
        new WaiverCompiler(DICTIONARY.vocabulary())
            .compile(new SourceText("waivers.rime", text), standard);
    assertThat(compiled.diagnostics()).isEmpty();
    CheckOptions today =
        new CheckOptions(Optional.empty(), Optional.of(LocalDate.of(2026, 11, 25)), 1);
    CheckResult result =
        new Checker(DICTIONARY, standard)
            .check(PlanGuideTest.completeExample(), today, compiled.waivers());
    assertThat(result.waivers())
        .extracting(WaiverUse::state)
        .containsExactly(WaiverUse.State.USED, WaiverUse.State.USED);
    assertThat(result.waived()).isEqualTo(result.count(Verdict.BROKEN));
    assertThat(RuleFormatter.format(new SourceText("waivers.rime", text))).isEqualTo(text);
  }

  @Test
  void theStatesOfAWaiverAreThese() {
    assertThat(GUIDE.tables("Waivers").get(1).column(0))
        .containsExactlyElementsOf(
            Arrays.stream(WaiverUse.State.values()).map(WaiverUse.State::words).toList());
  }

  /** What the section on traps, and the tables' remarks on what is undecided, say. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          box must have distance to another box >= 36 in                          | R-1         | MET
          box must not be within 36 in of another box                             | R-1         | BROKEN
          for each cable, smallest distance to it of cables must be at least 1 in | C           | BROKEN
          for each cable, distance to the nearest cable must be at least 1 in     | C           | UNDECIDED
          box must touch all but 99 studs                                         | R-1         | MET
          box must touch all but 1 stud                                           | R-1         | BROKEN
          stud must have spacing to the next stud <= 17 in                        | SL-10       | UNDECIDED
          stud must have depth <= 2 in                                            | SL-1        | MET
          stud must have width <= 2 in                                            | SL-1        | MET
          stud must have height >= 2 m                                            | SL-1        | MET
          stud must have steel thickness <= 1 mm                                  | SL-1        | MET
          bracket must hold a box                                                 | R-bracket-1 | UNDECIDED
          bracket must hold a box                                                 | S-bracket   | MET
          bracket must touch a box                                                | R-bracket-1 | MET
          box must sit in inward rib                                              | S           | MET
          box must face web                                                       | J           | MET
          box must face only outer bay                                            | J           | BROKEN
          box must sit in outer bay                                               | J           | MET
          box must sit in outer bay with clearance >= 2 in                        | R-1         | MET
          bar must pass behind a box                                              | backing     | BROKEN
          box must touch a stud or not touch the shell                            | J           | UNDECIDED
          box must be recessed or not touch the shell                             | J           | MET
          each box where clearance > 0 mm must be recessed                        | J           | MET
          """)
  void aRemarkOfTheGuideIsTrueOfItsPlan(String sentence, String element, Verdict verdict) {
    Checker checker = new Checker(DICTIONARY, standard(withSentence(sentence)));
    PlanFacts facts = new PlanFacts(PlanGuideTest.completeExample(), DICTIONARY);
    assertThat(checker.explain("r", element, facts).verdict()).isEqualTo(verdict);
  }

  private static Condition where(String condition) {
    String sentence = "each box where " + condition + " must touch the shell";
    return standard(withSentence(sentence)).rules().get(0).where().orElseThrow();
  }

  private static Standard standard(String text) {
    Compilation compilation = COMPILER.compile(new SourceText("guide.rime", text), FINDER);
    assertThat(printed(text)).isEmpty();
    return compilation.standard().orElseThrow();
  }

  private static String printed(String text) {
    SourceText source = new SourceText("tamarack-house.rime", text);
    Compilation compilation = COMPILER.compile(source, FINDER);
    return compilation.diagnostics().stream()
        .map(diagnostic -> DiagnosticPrinter.print(diagnostic, compilation.source()))
        .collect(Collectors.joining());
  }

  static String withSentence(String sentence) {
    return """
        standard guide edition 1

        rule r "The sentence"
          %s
          severity fix
          stage layout
          because "the guide shows it"
          source "common practice, no source"
        """
        .formatted(sentence);
  }
}
