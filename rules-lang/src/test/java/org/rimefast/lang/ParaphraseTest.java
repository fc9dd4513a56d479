package org.rimefast.lang;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rimefast.lang.internal.paraphrase.SentenceWriter;
import org.rimefast.lang.internal.paraphrase.Style;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Severity;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.rule.Table;
import org.rimefast.lang.rule.Term;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.rule.Variable;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.ValueType;

/** What is said of a rule reads back to the same rule. */
final class ParaphraseTest {
  private static final Paraphrase PARAPHRASE = new Paraphrase(Words.vocabulary());
  private static final Paraphrase RANDOM = new Paraphrase(RandomRules.VOCABULARY);
  private static final RuleCompiler COMPILER = new RuleCompiler(Words.vocabulary());
  private static final Span NOWHERE = new Span(0, 0);
  private static final Path RULES = Path.of("src", "test", "resources", "rules");

  @Property(seed = "20261125", tries = 3_000)
  void everyTypedRuleIsSaid(@ForAll long seed) {
    RandomRules rules = new RandomRules(seed);
    for (Term term : rules.terms()) {
      assertThat(RANDOM.ofTerm(term)).as(term.toString()).isInstanceOf(Paraphrase.Words.class);
    }
    Rule rule = rules.rule();
    assertThat(RANDOM.of(rule))
        .as(() -> SentenceWriter.sentence(rule, Style.PLAIN).words())
        .isInstanceOf(Paraphrase.Words.class);
  }

  /** What the paraphrase itself checks is checked once more, by another comparison. */
  @Property(seed = "20261126", tries = 500)
  void whatIsSaidOfATypedRuleHasTheSameTree(@ForAll long seed) {
    RandomRules rules = new RandomRules(seed);
    Rule rule = rules.rule();
    StringBuilder text = new StringBuilder(SourceTexts.HEADER);
    rules
        .constants()
        .forEach(c -> text.append("let " + c.name() + " be " + c.value().quantity()).append('\n'));
    rules.terms().forEach(t -> text.append(words(RANDOM.ofTerm(t))).append('\n'));
    text.append(SourceTexts.rule("r-1", words(RANDOM.of(rule))));
    Compilation read =
        new RuleCompiler(RandomRules.VOCABULARY).compile(new SourceText("x", text.toString()));
    assertThat(read.diagnostics()).as(text.toString()).isEmpty();
    assertThat(withoutPlaces(read.standard().orElseThrow().rules()))
        .isEqualTo(withoutPlaces(List.of(rule)));
    FormattingLaws.hold(text.toString());
  }

  @Property(seed = "20261127", tries = 1_000)
  void everySentenceOfTheLanguageIsSaid(@ForAll long seed) {
    String sentence = new SentenceMaker(seed).sentence();
    isSaid(SourceTexts.withSentence(SentenceMaker.TERMS, sentence));
  }

  @TestFactory
  Stream<DynamicTest> everyGoldenRuleIsSaid() throws IOException {
    List<DynamicTest> tests = new ArrayList<>();
    for (String name :
        Arrays.stream(RULES.toFile().list()).filter(n -> n.endsWith(".rime")).sorted().toList()) {
      String text = Files.readString(RULES.resolve(name));
      tests.add(DynamicTest.dynamicTest(name, () -> isSaid(new SourceText(name, text))));
    }
    assertThat(tests).hasSizeGreaterThan(60);
    return tests.stream();
  }

  /** By the sentence that is made of its tree, not by its own. */
  private static void isSaid(SourceText source) {
    Standard standard = COMPILER.compile(source, LayerTexts.FINDER).standard().orElseThrow();
    for (Table table : standard.tables()) {
      assertThat(PARAPHRASE.ofTable(table)).as(source.text()).isInstanceOf(Paraphrase.Words.class);
    }
    for (Rule rule : standard.rules()) {
      assertThat(PARAPHRASE.meaning(rule)).isInstanceOf(Paraphrase.Words.class);
      Paraphrase.Result result = PARAPHRASE.of(rule);
      assertThat(result).as(source.text()).isInstanceOf(Paraphrase.Words.class);
      List<String> made =
          Stream.of(Style.values()).map(s -> SentenceWriter.sentence(rule, s).words()).toList();
      assertThat(made).contains(words(result));
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          box must sit in outer bay with clearance >= 2 in | each box must sit in outer bay and have clearance of at least 2 in
          box must not touch a stud (where depth < 5 mm) | each box must not touch a stud (where its depth is less than 5 mm)
          for each box, exactly 1 bracket must hold it | for each box, exactly 1 bracket must hold it
          for each room, number of boxes (where mount = flush) must be at most 12 | for each room, number of boxes (where its mount is flush) must be at most 12
          for each box, its room must be wet | for each box, its room must be wet
          box must have mount = flush | for each box, its mount must be flush
          """)
  void aRuleIsSaidInOneWay(String sentence, String said) {
    Standard standard =
        COMPILER.compile(SourceTexts.withSentence(sentence)).standard().orElseThrow();
    assertThat(words(PARAPHRASE.of(standard.rules().get(0)))).isEqualTo(said);
  }

  @Test
  void whatNoSentenceSaysIsToldWithItsReason() {
    Variable room = new Variable(0, Words.ROOM);
    Reference it = new Reference.Bound(room);
    Value temperature = property("room.temperature", it);
    Variable counted = new Variable(1, Words.ROOM);
    Value of = property("room.temperature", new Reference.Bound(counted));
    Value half =
        new Value.Arithmetic(
            Value.Arithmetic.Operator.PLUS, of, kelvin(), Words.TEMPERATURE, NOWHERE);
    Value average =
        new Value.Aggregate(
            Value.Aggregate.Function.AVERAGE,
            counted,
            Optional.empty(),
            Optional.of(half),
            Words.TEMPERATURE,
            NOWHERE);
    assertUnsayable(same(temperature, average), Paraphrase.Reason.MADE_OF_NO_PROPERTY);
    Value flush = new Value.Word("flush", Words.MOUNT, NOWHERE);
    assertUnsayable(same(flush, flush), Paraphrase.Reason.WORD_WITHOUT_LIST);
    Value elsewhere =
        property("room.temperature", new Reference.Bound(new Variable(3, Words.ROOM)));
    assertUnsayable(same(temperature, elsewhere), Paraphrase.Reason.UNNAMED_ELEMENT);
    Value quote = new Value.Text("a \"", new ValueType.Text(), NOWHERE);
    assertUnsayable(same(quote, quote), Paraphrase.Reason.UNQUOTABLE_TEXT);
    Condition always = new Condition.IsA(it, Words.ROOM, Optional.empty(), NOWHERE);
    assertUnsayable(always, Paraphrase.Reason.REFUSED);
    Condition numbered =
        new Condition.Quantified(
            Condition.Quantified.Quantifier.SOME,
            7,
            counted,
            false,
            Optional.empty(),
            same(temperature, of),
            NOWHERE);
    assertUnsayable(numbered, Paraphrase.Reason.READ_OTHERWISE);
    Condition deep = same(temperature, of);
    for (int i = 11; i > 0; i--) {
      Variable variable = new Variable(i, Words.ROOM);
      deep =
          new Condition.Quantified(
              Condition.Quantified.Quantifier.EACH,
              0,
              variable,
              false,
              Optional.empty(),
              i < 11
                  ? deep
                  : same(
                      property(
                          "room.temperature", new Reference.Bound(new Variable(10, Words.ROOM))),
                      temperature),
              NOWHERE);
    }
    assertUnsayable(deep, Paraphrase.Reason.TOO_MANY_OF_ONE_NOUN);
  }

  private static Condition same(Value left, Value right) {
    return new Condition.Compare(left, Comparison.EQUAL, right, NOWHERE);
  }

  private static Value kelvin() {
    return RandomRules.literal("1 K");
  }

  private static Value property(String id, Reference owner) {
    return new Value.Of(
        RandomRules.VOCABULARY.properties().stream()
            .filter(p -> p.id().equals(id))
            .findFirst()
            .orElseThrow(),
        owner,
        List.of(),
        NOWHERE);
  }

  private static void assertUnsayable(Condition requirement, Paraphrase.Reason reason) {
    Rule rule =
        new Rule(
            "r-1",
            "Title",
            new Variable(0, Words.ROOM),
            Optional.empty(),
            Optional.empty(),
            requirement,
            Severity.HOLD,
            "pre-foam",
            "reason",
            "common practice, no source",
            "",
            NOWHERE,
            NOWHERE);
    assertThat(RANDOM.of(rule))
        .isInstanceOfSatisfying(
            Paraphrase.Unsayable.class,
            unsayable -> {
              assertThat(unsayable.reason()).isEqualTo(reason);
              assertThat(unsayable.why()).endsWith(".");
            });
    assertThat(RANDOM.meaning(rule).text()).isEmpty();
  }

  private static String words(Paraphrase.Result result) {
    return result.text().orElseThrow(() -> new AssertionError(result));
  }

  /** The trees as they print, but for whatever stands in a span. */
  private static String withoutPlaces(List<Rule> rules) {
    StringBuilder all = new StringBuilder();
    for (Rule rule : rules) {
      all.append(rule.subject())
          .append(rule.where())
          .append(rule.onlyIf())
          .append(rule.requirement());
    }
    return all.toString().replaceAll("Span\\[start=\\d+, end=\\d+]", "-");
  }
}
