package org.rimefast.rulesets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.rimefast.check.Dictionary;
import org.rimefast.check.SteelModules;
import org.rimefast.check.cases.CaseResults;
import org.rimefast.check.cases.CaseRunner;
import org.rimefast.lang.CaseCompilation;
import org.rimefast.lang.CaseCompiler;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.RuleFormatter;
import org.rimefast.lang.cases.Case;
import org.rimefast.lang.cases.CaseEdit;
import org.rimefast.lang.cases.Expectation;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.SourceText;
import org.rimefast.report.CaseReport;
import org.rimefast.report.TextOptions;

/**
 * The cases that the guide shows come out as it says. Pitch 278 mm, phase 40 mm: on the left wall a
 * bay's middle is at 1326 mm, a rib's at 1187 mm.
 */
class CasesGuideTest {
  private static final Guide GUIDE = Guide.read("writing-a-standard.md");
  private static final Dictionary DICTIONARY = SteelModules.dictionary();
  private static final String PLAN =
      """
      {"format": "rimefast-plan-1", "id": "small", "title": "Small (invented)", "units": "mm",
       "shell": {"size": "45G1"},
       "faces": {"default": {"profile": "side wall", "phase": 40, "standoff": 25,
         "stud": {"depth": 41.3, "flange": 31.75, "thickness": 0.84}, "lining": 12.7}},
       "studs": [{"id": "SL", "face": "left", "along": 1368.9,
         "repeat": {"count": 4, "spacing": "16 in"}}],
       "boxes": [{"id": "R-1", "kind": "device", "face": "left", "along": 1326, "up": 1200,
         "width": 54, "height": 76, "depth": 47.6, "mount": "flush"}],
       "runs": [{"id": "C-1", "kind": "armoured-cable", "diameter": 11, "path": [
         {"face": "left", "along": 1187, "up": 300, "depth": 20},
         {"face": "left", "along": 2187, "up": 300, "depth": 20}]}]}
      """;

  static List<String> texts() {
    List<String> texts = new ArrayList<>(GUIDE.texts("rime-cases"));
    texts.addAll(GUIDE.texts("rime-cases-otherwise"));
    return texts;
  }

  static List<String> lines() {
    return GUIDE.tables("Cases").get(0).column(0);
  }

  static List<String> expectations() {
    return GUIDE.tables("Cases").get(1).column(0);
  }

  @Test
  void theCasesComeOutAsExpected() {
    for (String text : GUIDE.texts("rime-cases")) {
      CaseResults results = run(text);
      assertThat(results.areAsExpected()).as(CaseReport.write(results, TextOptions.PLAIN)).isTrue();
      assertThat(results.results()).isNotEmpty();
    }
  }

  @Test
  void theCaseThatComesOutOtherwiseIsToldAsPrinted() {
    List<String> otherwise = GUIDE.texts("rime-cases-otherwise");
    List<String> told = GUIDE.texts("text-cases");
    assertThat(told).hasSameSizeAs(otherwise);
    for (int i = 0; i < told.size(); i++) {
      CaseResults results = run(otherwise.get(i));
      assertThat(CaseReport.one(results.results().get(0), results, TextOptions.PLAIN))
          .isEqualTo(told.get(i));
    }
  }

  @ParameterizedTest
  @MethodSource("texts")
  void theCasesAreLaidOut(String text) {
    assertThat(RuleFormatter.format(source(text))).isEqualTo(text);
  }

  @ParameterizedTest
  @MethodSource("lines")
  void aLineThatIsListedCanStandInACase(String cell) {
    String line = cell.substring(1, cell.length() - 1);
    String plan = line.startsWith("plan") ? "" : "plan \"p.json\"\n";
    Case found = only(plan + line + "\nexpect met\n");
    List<String> written = found.edits().stream().map(CaseEdit::written).toList();
    if (line.startsWith("plan")) {
      assertThat(written).isEmpty();
    } else {
      assertThat(written).singleElement().asString().isSubstringOf(line);
    }
  }

  @ParameterizedTest
  @MethodSource("expectations")
  void anExpectationThatIsListedCanStandInACase(String cell) {
    String line = cell.substring(1, cell.length() - 1);
    assertThat(only("plan \"p.json\"\n" + line + "\n").expectations())
        .extracting(Expectation::written)
        .containsExactly(line);
  }

  @Test
  void everyOutcomeIsListed() {
    for (Expectation.Outcome outcome : Expectation.Outcome.values()) {
      assertThat(expectations()).anyMatch(cell -> cell.startsWith("`expect " + outcome.words()));
    }
  }

  private static Case only(String lines) {
    CaseCompilation compiled =
        compile("cases for tamarack-house\n\ncase \"a\" of box-in-outer-bay\n" + lines);
    assertThat(compiled.diagnostics()).isEmpty();
    return compiled.cases().get(0);
  }

  private static CaseResults run(String text) {
    CaseCompilation compiled = compile(text);
    assertThat(compiled.diagnostics()).isEmpty();
    return new CaseRunner(
            DICTIONARY, (file, name) -> Optional.of(PLAN.getBytes(StandardCharsets.UTF_8)))
        .run(standard(), compiled.cases());
  }

  private static CaseCompilation compile(String text) {
    return CaseCompiler.compile(source(text), standard());
  }

  private static SourceText source(String text) {
    return new SourceText("tamarack-house.cases.rime", text);
  }

  private static Standard standard() {
    return new RuleCompiler(DICTIONARY.vocabulary())
        .compile(new SourceText("tamarack-house.rime", GUIDE.texts("rime").get(0)))
        .standard()
        .orElseThrow();
  }
}
