package org.rimefast.rulesets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.rimefast.check.Dictionary;
import org.rimefast.check.StandardLibrary;
import org.rimefast.check.SteelModules;
import org.rimefast.check.cases.CaseResult;
import org.rimefast.check.cases.CaseRunner;
import org.rimefast.check.cases.PreparedCase;
import org.rimefast.check.cases.RuleStrength;
import org.rimefast.check.cases.StrengthMeter;
import org.rimefast.lang.CaseCompiler;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.cases.Case;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.SourceText;

/**
 * Mistakes that authors make, put into the shipped standard one at a time. Each must be caught: by
 * the compiler, by the standard's cases, or by being among the changes that the measure of strength
 * says no case would notice. The page about them holds what came out.
 */
class AuthoringMistakesTest {
  private static final Path PAGE = Path.of("authoring-mistakes.md");
  private static final Path FOLDER = Path.of("src/main/resources/META-INF/rimefast");
  private static final Dictionary DICTIONARY = SteelModules.dictionary();
  private static final RuleCompiler COMPILER = new RuleCompiler(DICTIONARY.vocabulary());
  private static final CaseRunner RUNNER =
      new CaseRunner(
          DICTIONARY, (file, name) -> Optional.of(Files.readAllBytes(FOLDER.resolve(name))));

  /**
   * One mistake.
   *
   * @param kind what kind of mistake it is
   * @param right what the standard says
   * @param wrong what is written instead
   */
  private record Mistake(String kind, String right, String wrong) {}

  /** How a mistake is caught. */
  private record Caught(String by, String how) {}

  private static final List<Mistake> MISTAKES =
      List.of(
          new Mistake("unit swapped", "foam behind a box be 2 in", "foam behind a box be 2 mm"),
          new Mistake("unit swapped", "foam over a run be 25 mm", "foam over a run be 25 in"),
          new Mistake("unit swapped", "clearance >= 8.4 mm unless", "clearance >= 8.4 in unless"),
          new Mistake(
              "unit of another kind", "thermal barrier be 1/2 in", "thermal barrier be 1/2 W"),
          new Mistake("unit left out", "clearance >= 8.4 mm unless", "clearance >= 8.4 unless"),
          new Mistake("unit misspelt", "foam over metal be 1 in", "foam over metal be 1 inn"),
          new Mistake("limit one step off", "foam over a run be 25 mm", "foam over a run be 24 mm"),
          new Mistake("limit one step off", "spacing be 16-1/2 in", "spacing be 16-5/8 in"),
          new Mistake("digit lost", "spacing be 16-1/2 in", "spacing be 6-1/2 in"),
          new Mistake(
              "decimal point lost", "clearance >= 8.4 mm unless", "clearance >= 84 mm unless"),
          new Mistake("decimal comma", "clearance >= 8.4 mm unless", "clearance >= 8,4 mm unless"),
          new Mistake(
              "limit the wrong way", "clearance >= 8.4 mm unless", "clearance <= 8.4 mm unless"),
          new Mistake(
              "limit the wrong way",
              "must be at least thinnest wall foam",
              "must be at most thinnest wall foam"),
          new Mistake(
              "strict by mistake", "clearance >= 8.4 mm unless", "clearance > 8.4 mm unless"),
          new Mistake(
              "strict by mistake",
              "must be at least thermal barrier",
              "must be more than thermal barrier"),
          new Mistake(
              "wrong constant",
              "foam cover >= foam over metal",
              "foam cover >= thinnest wall foam"),
          new Mistake(
              "constant misspelt",
              "foam cover >= foam over metal",
              "foam cover >= foam over metall"),
          new Mistake("constant twice", "let thermal barrier be", "let thinnest roof foam be"),
          new Mistake(
              "word misspelt", "box must not touch the shell", "box must not tuch the shell"),
          new Mistake("noun misspelt", "panel must be mounted", "pannel must be mounted"),
          new Mistake(
              "wrong form of a verb", "run must not stand proud", "run must not stands proud"),
          new Mistake("wrong form of a noun", "or touch a bracket", "or touch a brackets"),
          new Mistake("article left out", "must touch a stud or", "must touch stud or"),
          new Mistake("not left out", "box must not touch the shell", "box must touch the shell"),
          new Mistake("not put in", "panel must be mounted", "panel must not be mounted"),
          new Mistake(
              "or for and",
              "it is on a wall and it is recessed",
              "it is on a wall or it is recessed"),
          new Mistake("and for or", "must touch a stud or touch", "must touch a stud and touch"),
          new Mistake(
              "and with or",
              "it is on a wall and it is recessed must",
              "it is on a wall and it is recessed or it is metal must"),
          new Mistake("exception left out", " unless it is on the roof", ""),
          new Mistake("exception turned round", "unless it is on the roof", "if it is on the roof"),
          new Mistake("condition left out", " (where it is metal)", ""),
          new Mistake(
              "condition left out",
              "each box where it is on a wall and it is recessed",
              "each box where it is recessed"),
          new Mistake(
              "scope too wide",
              "each bar where it is metal must not pass",
              "each bar must not pass"),
          new Mistake("scope too narrow", "run must not stand proud", "cable must not stand proud"),
          new Mistake(
              "another scope",
              "each luminaire where it is on the roof must",
              "each luminaire where it is on a wall must"),
          new Mistake(
              "wrong kind of element", "cable must have clearance", "conduit must have clearance"),
          new Mistake(
              "wrong face",
              "where it is on the roof and it is recessed",
              "where it is on the floor and it is recessed"),
          new Mistake(
              "wrong property",
              "its foam thickness must be at least thinnest wall",
              "its lining thickness must be at least thinnest wall"),
          new Mistake(
              "property of another kind of element",
              "panel must have clearance",
              "panel must have pitch"),
          new Mistake(
              "wrong word of a list",
              "for each wall, its foam kind must be closed-cell",
              "for each wall, its foam kind must be open-cell"),
          new Mistake(
              "word of no list",
              "for each roof, its foam kind must be closed-cell",
              "for each roof, its foam kind must be closed"),
          new Mistake("each for a", "must not touch a bar", "must not touch each bar"),
          new Mistake("no after not", "must not touch a bar", "must not touch no bar"),
          new Mistake(
              "comparison unfinished",
              "must have clearance >= foam over a run",
              "must have clearance >="),
          new Mistake("severity misspelt", "severity advise", "severity advice"),
          new Mistake("stage misspelt", "stage pre-foam", "stage prefoam"),
          new Mistake(
              "reason left out",
              "  because \"foam pushes: it twists a box that nothing holds and freezes it crooked\"\n",
              ""),
          new Mistake("rule named twice", "rule bar-under-foam", "rule bar-off-the-shell"),
          new Mistake(
              "quote left open",
              "\"No box touches the steel of the shell\"",
              "\"No box touches the steel of the shell"),
          new Mistake(
              "curly quotes",
              "\"No box touches the steel of the shell\"",
              "\u201cNo box touches the steel of the shell\u201d"));

  @Test
  void everyMistakeIsCaughtAsThePageSays() throws IOException {
    String text = StandardLibrary.find("cold-steel-modules").orElseThrow().text();
    Standard right =
        COMPILER.compile(new SourceText("standard.rime", text)).standard().orElseThrow();
    List<PreparedCase> cases = cases(right).stream().map(RUNNER::prepare).toList();
    List<RuleStrength> strength =
        new StrengthMeter(DICTIONARY, RUNNER).measure(right, cases).rules();
    StringBuilder rows = new StringBuilder();
    List<String> missed = new ArrayList<>();
    for (Mistake mistake : MISTAKES) {
      assertThat(text).as(mistake.kind()).contains(mistake.right());
      String wrong = replacedOnce(text, mistake);
      Optional<Caught> caught = caught(right, wrong, strength);
      if (caught.isEmpty()) {
        missed.add(mistake.kind() + ": " + shown(mistake.wrong()));
      }
      rows.append("| ")
          .append(mistake.kind())
          .append(" | ")
          .append(shown(mistake.right()))
          .append(" | ")
          .append(shown(mistake.wrong()))
          .append(" | ")
          .append(caught.map(Caught::by).orElse(""))
          .append(" | ")
          .append(caught.map(Caught::how).orElse("").replace("|", "\\|"))
          .append(" |\n");
    }
    Path out = Path.of("target", "authoring-mistakes.rows");
    Files.writeString(out, rows.toString());
    assertThat(missed).isEmpty();
    assertThat(MISTAKES).hasSizeGreaterThanOrEqualTo(40);
    assertThat(Files.readString(PAGE)).as("the rows are in " + out).endsWith("\n" + rows);
  }

  private static String replacedOnce(String text, Mistake mistake) {
    int at = text.indexOf(mistake.right());
    return text.substring(0, at) + mistake.wrong() + text.substring(at + mistake.right().length());
  }

  /** On one line, as code; without what stands around it. */
  private static String shown(String text) {
    String line = text.replaceAll("\\s+", " ").strip();
    return line.isEmpty() ? "nothing" : "`" + line + "`";
  }

  private static List<Case> cases(Standard standard) throws IOException {
    SourceText text =
        new SourceText(
            "cold-steel-modules.cases.rime",
            Files.readString(FOLDER.resolve("cold-steel-modules.cases.rime")));
    return CaseCompiler.compile(text, standard).cases();
  }

  private static Optional<Caught> caught(Standard right, String wrong, List<RuleStrength> strength)
      throws IOException {
    Compilation compilation = COMPILER.compile(new SourceText("standard.rime", wrong));
    Optional<Diagnostic> error =
        compilation.diagnostics().stream()
            .filter(d -> d.level() == Diagnostic.Level.ERROR)
            .findFirst();
    if (error.isPresent()) {
      return Optional.of(new Caught("compiler", error.get().headline()));
    }
    Standard standard = compilation.standard().orElseThrow();
    for (CaseResult result : RUNNER.run(standard, cases(standard)).results()) {
      if (!result.isAsExpected()) {
        return Optional.of(new Caught("case", result.example().name()));
      }
    }
    return byStrength(right, standard, strength);
  }

  /** The changed rule is one that the measure says nothing tells apart from the right one. */
  private static Optional<Caught> byStrength(
      Standard right, Standard wrong, List<RuleStrength> strength) {
    for (int i = 0; i < right.rules().size(); i++) {
      Rule before = right.rules().get(i);
      Rule after = wrong.rules().get(i);
      if (!before.sentence().equals(after.sentence())) {
        List<String> unnoticed =
            strength.get(i).unnoticed().stream()
                .map(u -> "nothing tells " + u.told() + ": " + u.place())
                .toList();
        return unnoticed.stream()
            .filter(told -> fits(told, before.sentence(), after.sentence()))
            .findFirst()
            .map(told -> new Caught("strength", told));
      }
    }
    return Optional.empty();
  }

  /** True if what is told apart stands in the one sentence and not in the other. */
  private static boolean fits(String told, String before, String after) {
    String place = told.substring(told.indexOf(": ") + 2);
    return before.contains(place) && !after.contains(place);
  }
}
