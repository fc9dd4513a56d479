package org.rimefast.lang.internal.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.antlr.v4.runtime.BaseErrorListener;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.ListTokenSource;
import org.antlr.v4.runtime.Parser;
import org.antlr.v4.runtime.atn.ATNConfigSet;
import org.antlr.v4.runtime.atn.PredictionMode;
import org.antlr.v4.runtime.dfa.DFA;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.rimefast.lang.RandomTexts;
import org.rimefast.lang.source.SourceText;

/** No statement can be derived from the grammar in two ways: every ambiguity is looked for. */
final class AmbiguityTest {
  private static final List<Path> FOLDERS =
      List.of(
          Path.of("src", "test", "resources", "rules"),
          Path.of("src", "test", "resources", "format"),
          Path.of("src", "test", "resources", "diagnostics"),
          Path.of("src", "test", "resources", "layers"),
          Path.of("src", "test", "resources", "waivers"),
          Path.of("..", "rulesets", "src", "main", "resources", "META-INF", "rimefast"),
          Path.of("..", "examples"));

  @TestFactory
  Stream<DynamicTest> noFileOfRulesCanBeReadInTwoWays() throws IOException {
    List<DynamicTest> tests = new ArrayList<>();
    for (Path folder : FOLDERS) {
      try (Stream<Path> files = Files.list(folder)) {
        for (Path file : files.filter(f -> f.toString().endsWith(".rime")).sorted().toList()) {
          String text = Files.readString(file);
          tests.add(DynamicTest.dynamicTest(file.getFileName().toString(), () -> one(text)));
        }
      }
    }
    assertThat(tests).hasSizeGreaterThan(300);
    return tests.stream();
  }

  @Test
  void noSentenceOfTheGuideCanBeReadInTwoWays() throws IOException {
    String guide = Files.readString(Path.of("..", "rulesets", "writing-a-standard.md"));
    int blocks = 0;
    for (String block : guide.split("```rime")) {
      String text =
          block.substring(
              block.indexOf('\n') + 1, Math.max(block.indexOf("```"), block.indexOf('\n') + 1));
      if (block.startsWith("-sentence\n")) {
        for (String sentence : text.strip().split("\n\n")) {
          one("rule r \"t\"\n" + sentence + "\n");
          blocks++;
        }
      } else if (blocks > 0) {
        one(text);
      }
    }
    assertThat(blocks).isGreaterThan(40);
  }

  @Property(seed = "20261125", tries = 1_000)
  void noSentenceMadeAtRandomCanBeReadInTwoWays(@ForAll long seed) {
    one(RandomTexts.ofWords(seed));
    one(RandomTexts.ofTrees(seed));
  }

  @Test
  void whereTwoReadingsWereOncePossibleThereIsOne() {
    one("rule r \"t\" \"goes on\" box must touch a stud");
    one("rule r \"t\" box must (touch a stud) and not (be at least 2 in or not be at rest)");
    one("rule r \"t\" for each box, its depth must not be more than 2 in and not less than 1 in");
  }

  private static void one(String text) {
    assertThat(ambiguities(text)).as(text).isEmpty();
  }

  private static List<String> ambiguities(String text) {
    List<String> found = new ArrayList<>();
    for (Tokens.Run run : new Tokens(new SourceText("x", text), 0).statements()) {
      RimeParser parser = new RimeParser(new CommonTokenStream(new ListTokenSource(run.tokens())));
      parser.removeErrorListeners();
      parser.getInterpreter().setPredictionMode(PredictionMode.LL_EXACT_AMBIG_DETECTION);
      parser.addErrorListener(
          new BaseErrorListener() {
            @Override
            public void reportAmbiguity(
                Parser recognizer,
                DFA dfa,
                int start,
                int stop,
                boolean exact,
                BitSet alternatives,
                ATNConfigSet configs) {
              String rule = recognizer.getRuleNames()[dfa.atnStartState.ruleIndex];
              found.add(rule + " " + alternatives + " from token " + start + " to " + stop);
            }
          });
      StatementReader.parse(parser, run.tokens().get(0));
    }
    return found;
  }
}
