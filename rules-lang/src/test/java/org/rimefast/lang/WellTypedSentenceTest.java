package org.rimefast.lang;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticPrinter;
import org.rimefast.lang.source.SourceText;

/** Sentences made at random from the vocabulary compile; what is made of them never breaks. */
final class WellTypedSentenceTest {
  private static final RuleCompiler COMPILER = new RuleCompiler(Words.vocabulary());

  @Property(seed = "20261125", tries = 2_000)
  void aSentenceMadeOfTheVocabularyCompiles(@ForAll long seed) {
    String sentence = new SentenceMaker(seed).sentence();
    Compilation compilation =
        COMPILER.compile(SourceTexts.withSentence(SentenceMaker.TERMS, sentence));
    assertThat(compilation.diagnostics()).as(sentence).isEmpty();
    assertThat(compilation.standard().orElseThrow().rules().get(0).sentence()).isEqualTo(sentence);
  }

  @Property(seed = "20261125", tries = 2_000)
  void aSentenceWithAChangeIsAnsweredAndNeverBreaks(@ForAll long seed) {
    Random random = new Random(seed);
    String sentence = new SentenceMaker(seed).sentence();
    List<String> words = new ArrayList<>(List.of(sentence.split(" ")));
    for (int i = random.nextInt(3); i >= 0; i--) {
      int at = random.nextInt(words.size());
      String other = words.get(random.nextInt(words.size()));
      switch (random.nextInt(5)) {
        case 0 -> words.remove(at);
        case 1 -> words.add(at, other);
        case 2 -> words.set(at, other);
        case 3 -> words.set(at, words.get(at).substring(random.nextInt(words.get(at).length())));
        default -> words.add(at, "()>=<!=+-\"',%.é\u2265".substring(random.nextInt(15)));
      }
      if (words.isEmpty()) {
        words.add("x");
      }
    }
    answered(SourceTexts.withSentence(SentenceMaker.TERMS, String.join(" ", words)));
  }

  @Property(seed = "20261125", tries = 1_000)
  void anyTextIsAnswered(@ForAll String text) {
    answered(new SourceText("x", text));
    answered(SourceTexts.withSentence(text));
  }

  private static void answered(SourceText source) {
    Compilation compilation =
        assertTimeoutPreemptively(Duration.ofSeconds(10), () -> COMPILER.compile(source));
    boolean failed =
        compilation.diagnostics().stream().anyMatch(d -> d.level() == Diagnostic.Level.ERROR);
    assertThat(compilation.standard().isEmpty()).as(source.text()).isEqualTo(failed);
    for (Diagnostic diagnostic : compilation.diagnostics()) {
      assertThat(diagnostic.span().end()).isLessThanOrEqualTo(source.text().length());
      assertThat(DiagnosticPrinter.print(diagnostic, source)).contains("error[");
    }
    assertThat(COMPILER.compile(source).diagnostics()).isEqualTo(compilation.diagnostics());
  }
}
