package org.rimefast.lang;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.rimefast.lang.internal.paraphrase.Definitions;
import org.rimefast.lang.internal.paraphrase.Said;
import org.rimefast.lang.internal.paraphrase.SentenceWriter;
import org.rimefast.lang.internal.paraphrase.Style;
import org.rimefast.lang.internal.paraphrase.WithoutPlaces;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Constant;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.rule.Table;
import org.rimefast.lang.rule.Term;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.vocabulary.Vocabulary;

/**
 * Says a typed rule in one canonical sentence, whoever wrote it and in whatever words.
 *
 * <p>What is said has been read back: the compiler makes the same typed rule of it, but for the
 * places in the text. A rule that no sentence of this vocabulary says is told as {@link Unsayable};
 * there is never a sentence that means something else. Every rule that the compiler made can be
 * said. Immutable and safe to share between threads.
 *
 * <p>Use:
 *
 * <pre>{@code
 * Paraphrase paraphrase = new Paraphrase(vocabulary);
 * paraphrase.of(rule).text(); // each box where it is on a wall must sit in outer bay and ...
 * }</pre>
 */
public final class Paraphrase {
  /** A text, or why there is none. */
  public sealed interface Result {
    /** The text, if there is one. */
    Optional<String> text();
  }

  /**
   * A text that reads back to the same.
   *
   * @param words the text
   */
  public record Words(String words) implements Result {
    @Override
    public Optional<String> text() {
      return Optional.of(words);
    }
  }

  /**
   * Why nothing can be said.
   *
   * @param reason for programs
   * @param why for people, one sentence
   */
  public record Unsayable(Reason reason, String why) implements Result {
    @Override
    public Optional<String> text() {
      return Optional.empty();
    }
  }

  /** What the language cannot say of a typed rule that no text was compiled to. */
  public enum Reason {
    /** A total or the like of something other than a property of the counted elements. */
    MADE_OF_NO_PROPERTY,
    /** A word of a list where nothing before it says which list. */
    WORD_WITHOUT_LIST,
    /** An element that nothing around the place names. */
    UNNAMED_ELEMENT,
    /** More than ten elements of one noun around the place: words count to the tenth. */
    TOO_MANY_OF_ONE_NOUN,
    /** A text that holds a quote or a line end. */
    UNQUOTABLE_TEXT,
    /** The compiler refuses the sentence, for instance because it asks what is always so. */
    REFUSED,
    /** The vocabulary has another reading of the sentence. */
    READ_OTHERWISE
  }

  private static final Result NO_STYLE =
      new Unsayable(Reason.REFUSED, "There are no words for it.");

  private final RuleCompiler compiler;

  /**
   * A paraphrase for a vocabulary.
   *
   * @param vocabulary the one that the rules were compiled with
   * @throws IllegalArgumentException as {@link RuleCompiler#RuleCompiler(Vocabulary)}; also if
   *     there are no stages, without which there are no rules
   */
  public Paraphrase(Vocabulary vocabulary) {
    if (vocabulary.stages().isEmpty()) {
      throw new IllegalArgumentException("a vocabulary without stages");
    }
    this.compiler = new RuleCompiler(vocabulary);
  }

  /**
   * The sentence of a rule, on one line: {@code each box where ... must ...}. Of an inspect item,
   * all that stands before its severity: {@code for each box ask "..." answer yes}.
   */
  public Result of(Rule rule) {
    Result result = NO_STYLE;
    for (Style style : Style.values()) {
      Said said = SentenceWriter.sentence(rule, style);
      Optional<Unsayable> wrong = obstacle(said).or(() -> readBack(rule, said.words(), style));
      if (wrong.isEmpty()) {
        return new Words(said.words());
      }
      result = wrong.get();
    }
    // Its own sentence says it, if it was not changed after it was read.
    return !rule.sentence().isEmpty()
            && rule.question().isEmpty()
            && readBack(rule, rule.sentence(), Style.PLAIN).isEmpty()
        ? new Words(rule.sentence())
        : result;
  }

  /** The definition of a term, on one line: {@code let wet room be a room where ...}. */
  public Result ofTerm(Term term) {
    Result result = NO_STYLE;
    for (Style style : Style.values()) {
      Said said = SentenceWriter.definition(term, style);
      Optional<Unsayable> wrong = obstacle(said).or(() -> readBack(term, style));
      if (wrong.isEmpty()) {
        return new Words(said.words());
      }
      result = wrong.get();
    }
    return result;
  }

  /**
   * A table: {@code table foam cover needed of a box by its mount} on one line, and a line for each
   * row and for {@code otherwise}.
   */
  public Result ofTable(Table table) {
    Result result = NO_STYLE;
    for (Style style : Style.values()) {
      Said said = SentenceWriter.definition(table, style);
      Optional<Unsayable> wrong = obstacle(said).or(() -> readBack(table, style));
      if (wrong.isEmpty()) {
        return new Words(said.words());
      }
      result = wrong.get();
    }
    return result;
  }

  private Result definition(Definitions.Definition one) {
    Term term = one.term();
    return term != null ? ofTerm(term) : ofTable(Objects.requireNonNull(one.table()));
  }

  private static Said written(Definitions.Definition one, Style style) {
    Term term = one.term();
    return term != null
        ? SentenceWriter.definition(term, style)
        : SentenceWriter.definition(Objects.requireNonNull(one.table()), style);
  }

  /**
   * All that decides what a rule finds, as text: the constants, terms and tables it stands on, its
   * sentence, severity and stage, a line each; a table has several. Two rules that mean the same
   * have the same text, whatever their layout, comments, title and reasons.
   */
  public Result meaning(Rule rule) {
    Result sentence = of(rule);
    Definitions definitions = Definitions.of(rule);
    if (!(sentence instanceof Words words)) {
      return sentence;
    }
    StringBuilder text = new StringBuilder();
    definitions.constants().forEach(constant -> text.append(definition(constant)).append('\n'));
    for (Definitions.Definition one : definitions.termsAndTables()) {
      Result result = definition(one);
      if (!(result instanceof Words definition)) {
        return result;
      }
      text.append(definition.words()).append('\n');
    }
    text.append(words.words()).append("\nseverity ").append(rule.severity().word());
    return new Words(text.append("\nstage ").append(rule.stage()).append('\n').toString());
  }

  private static String definition(Constant constant) {
    return "let " + constant.name() + " be " + constant.value().quantity().text();
  }

  private static Optional<Unsayable> obstacle(Said said) {
    return Optional.ofNullable(said.obstacle())
        .map(obstacle -> new Unsayable(Reason.valueOf(obstacle.kind().name()), obstacle.why()));
  }

  private Optional<Unsayable> readBack(Rule rule, String sentence, Style style) {
    String begin =
        rule.question()
            .map(question -> "inspect " + question.inspect() + " \"\"\n")
            .orElse("rule read-back \"\"\n");
    Compilation compilation = compile(Definitions.of(rule), style, begin + sentence, rule.stage());
    Optional<Unsayable> refused = refused(compilation);
    if (refused.isPresent()) {
      return refused;
    }
    Rule read = compilation.standard().orElseThrow().rules().get(0);
    return WithoutPlaces.of(read).equals(WithoutPlaces.of(rule))
        ? Optional.empty()
        : Optional.of(otherwise());
  }

  private Optional<Unsayable> readBack(Term term, Style style) {
    String sentence =
        "rule read-back \"\"\nfor each "
            + term.singular()
            + ", number of "
            + term.plural()
            + " must be at least 0";
    Compilation compilation =
        compile(Definitions.of(term), style, sentence, compiler.stages().get(0));
    Optional<Unsayable> refused = refused(compilation);
    if (refused.isPresent()) {
      return refused;
    }
    Standard standard = compilation.standard().orElseThrow();
    Optional<Term> read = standard.rules().get(0).where().flatMap(c -> ((Condition.IsA) c).term());
    return read.map(WithoutPlaces::of).equals(Optional.of(WithoutPlaces.of(term)))
        ? Optional.empty()
        : Optional.of(otherwise());
  }

  private Optional<Unsayable> readBack(Table table, Style style) {
    String sentence =
        "rule read-back \"\"\nfor each "
            + table.noun().singular()
            + ", number of "
            + table.noun().plural()
            + " must be at least 0";
    Compilation compilation =
        compile(Definitions.of(table), style, sentence, compiler.stages().get(0));
    Optional<Unsayable> refused = refused(compilation);
    if (refused.isPresent()) {
      return refused;
    }
    List<Table> tables = compilation.standard().orElseThrow().tables();
    Table read = tables.get(tables.size() - 1);
    return WithoutPlaces.of(read).equals(WithoutPlaces.of(table))
        ? Optional.empty()
        : Optional.of(otherwise());
  }

  private static Optional<Unsayable> refused(Compilation compilation) {
    return compilation.diagnostics().stream()
        .findFirst()
        .map(diagnostic -> new Unsayable(Reason.REFUSED, diagnostic.headline()));
  }

  private static Unsayable otherwise() {
    return new Unsayable(
        Reason.READ_OTHERWISE, "The sentence would be read as saying something else.");
  }

  private Compilation compile(Definitions definitions, Style style, String sentence, String stage) {
    StringBuilder text = new StringBuilder("standard read-back edition 1\n");
    definitions.constants().forEach(constant -> text.append(definition(constant)).append('\n'));
    for (Definitions.Definition one : definitions.termsAndTables()) {
      text.append(written(one, style).words()).append('\n');
    }
    text.append(sentence).append("\nseverity hold\nstage ");
    text.append(stage);
    text.append("\nbecause \"\"\nsource \"\"\n");
    return compiler.compile(new SourceText("read-back", text.toString()));
  }
}
