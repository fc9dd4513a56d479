package org.rimefast.lang.internal.resolve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.syntax.Clause;
import org.rimefast.lang.internal.syntax.Phrase;
import org.rimefast.lang.rule.Argument;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Constant;
import org.rimefast.lang.rule.Meaning;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Term;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Link;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.ValueType;

/**
 * Finds every reading of a phrase. Readings of each stretch are found once and kept; the number of
 * steps is bounded.
 */
public final class PhraseReader {
  /** What a phrase reader asks of the checker that uses it. */
  public interface Nested {
    /** The condition in {@code (where ...)}. */
    Result<Condition> condition(Clause where, Scope scope);

    /** The readings of a value in parentheses; {@code end} of each is ignored. */
    List<Reading<Value>> group(Phrase.GroupItem group, Scope scope, @Nullable ValueType wanted);

    /** The readings of a choice of values; {@code end} of each is ignored. */
    List<Reading<Value>> choice(
        Phrase.ConditionalItem choice, Scope scope, @Nullable ValueType wanted);
  }

  /** In which form a relation is looked for. */
  public enum Use {
    /** {@code sit in}. */
    BASE,
    /** {@code sits in}. */
    THIRD,
    /** {@code mounted on}, after {@code be}. */
    STATE
  }

  private static final int MOST_ITEMS = 200;
  private static final int MOST_STEPS = 100_000;

  private record Key(String kind, int place, Scope scope, @Nullable Object more) {}

  private final Phrase phrase;
  private final Dictionary dictionary;
  private final Constants constants;
  private final Terms terms;
  private final Tables tables;
  private final Nested nested;
  private final ReadingObserver observer;
  private final Misses misses;
  private final Map<Key, List<?>> memo = new HashMap<>();
  private final NounReader nouns;
  private final ReferenceReader references;
  private final ValueReader values;
  private final RelationReader relations;
  private int steps;

  /** A reader of one phrase. */
  public PhraseReader(
      Phrase phrase,
      Dictionary dictionary,
      Constants constants,
      Terms terms,
      Tables tables,
      Nested nested,
      ReadingObserver observer) {
    this.phrase = phrase;
    this.dictionary = dictionary;
    this.constants = constants;
    this.terms = terms;
    this.tables = tables;
    this.nested = nested;
    this.observer = observer;
    this.misses = new Misses(phrase, dictionary, observer);
    this.nouns = new NounReader(this);
    this.references = new ReferenceReader(this);
    this.values = new ValueReader(this);
    this.relations = new RelationReader(this);
  }

  /** How many items the phrase has. */
  public int size() {
    return phrase.items().size();
  }

  /** What to say if no reading reached the end. */
  public Diagnostic failure() {
    if (isExhausted()) {
      return Problems.error(
          DiagnosticCode.PHRASE_TOO_LONG,
          phrase.span(),
          "This phrase is too long to be understood.",
          "Say it in several conditions joined by \"and\", or in several rules.");
    }
    return misses.diagnostic();
  }

  /** Elements named from an item on: {@code it}, {@code the box}, {@code a stud}. */
  public List<Reading<Reference>> elements(int place, Scope scope) {
    return remembered(new Key("element", place, scope, null), () -> nouns.elements(place, scope));
  }

  /** All elements of a kind, named from an item on: {@code an insulator (where ...)}. */
  List<Reading<Argument.Those>> those(int place, Scope scope) {
    return nouns.those(place, scope);
  }

  List<Reading<Reference>> references(int place, Scope scope) {
    return remembered(
        new Key("reference", place, scope, null), () -> references.references(place, scope));
  }

  /** Values from an item on; words of a list only where {@code wanted} is that list. */
  public List<Reading<Value>> values(int place, Scope scope, @Nullable ValueType wanted) {
    return remembered(
        new Key("value", place, scope, wanted), () -> values.values(place, scope, wanted));
  }

  /** What holds of {@code subject}, from an item on. */
  public List<Reading<Condition>> relations(int place, Scope scope, Reference subject, Use use) {
    return remembered(
        new Key(use.name(), place, scope, subject),
        () -> relations.relations(place, scope, subject, use));
  }

  /** Whether {@code subject} is of a kind, after {@code is} or {@code be} at an item. */
  public List<Reading<Condition>> kindTests(
      int place, Scope scope, Reference subject, boolean plural) {
    return new KindReader(this).tests(place, scope, subject, plural);
  }

  /** Whether {@code subject} is one certain element, after {@code is} or {@code be} at an item. */
  public List<Reading<Condition>> sameTests(int place, Scope scope, Reference subject) {
    return new SameReader(this).tests(place, scope, subject);
  }

  /** A bare noun in the singular or plural at an item, for the subject of a rule. */
  public List<Reading<Kind>> bareNouns(int place, Scope scope, boolean plural) {
    return nouns.bare(place, scope, plural);
  }

  @SuppressWarnings("unchecked") // a key's kind fixes the type of its readings
  private <T> List<Reading<T>> remembered(Key key, Supplier<List<Reading<T>>> reader) {
    List<?> known = memo.get(key);
    if (known == null) {
      if (isExhausted()) {
        return List.of();
      }
      known = reader.get();
      memo.put(key, known);
    }
    return (List<Reading<T>>) known;
  }

  private boolean isExhausted() {
    return size() > MOST_ITEMS || steps > MOST_STEPS;
  }

  Dictionary dictionary() {
    return dictionary;
  }

  Constants constants() {
    return constants;
  }

  Tables tables() {
    return tables;
  }

  Nested nested() {
    return nested;
  }

  ReadingObserver observer() {
    return observer;
  }

  Misses misses() {
    return misses;
  }

  Phrase.@Nullable Item item(int place) {
    return place < size() ? phrase.items().get(place) : null;
  }

  /** The word at an item; nothing if there is none or it is no word. */
  String word(int place) {
    return item(place) instanceof Phrase.WordItem word ? word.text() : "";
  }

  Span span(int from, int end) {
    int last = Math.min(Math.max(end - 1, from), size() - 1);
    return phrase
        .items()
        .get(Math.min(from, size() - 1))
        .span()
        .to(phrase.items().get(last).span());
  }

  /** The end of a phrase without slots that starts at an item; -1 if it does not stand there. */
  int matchEnd(List<String> parts, int place) {
    for (int i = 0; i < parts.size(); i++) {
      steps++;
      if (!word(place + i).equals(parts.get(i))) {
        if (i > 0) {
          String rest = String.join(" ", parts.subList(i, parts.size()));
          misses.at(place + i, () -> List.of(rest));
        }
        return -1;
      }
    }
    misses.endedAt(place + parts.size());
    return place + parts.size();
  }

  /** Every entry whose whole phrase stands at an item, and where it ends. */
  <T> List<Found<T>> find(Dictionary.Table<T> table, int place) {
    List<Found<T>> found = new ArrayList<>();
    for (Dictionary.Entry<T> entry : table.startingWith(word(place))) {
      int end = matchEnd(entry.parts(), place);
      if (end >= 0) {
        found.add(new Found<>(entry.word(), end));
        Span span = span(place, end);
        if (entry.word() instanceof Link link) {
          observer.found(span, new Meaning.OfLink(link));
        } else if (entry.word() instanceof Constant constant) {
          observer.found(span, new Meaning.OfConstant(constant));
        }
      }
    }
    return found;
  }

  /** Every noun and term that stands at an item, and where it ends. */
  List<Found<Kind>> findKinds(int place, boolean plural) {
    List<Found<Kind>> found = new ArrayList<>();
    for (Found<Noun> noun : find(plural ? dictionary.plurals() : dictionary.singulars(), place)) {
      found.add(new Found<>(Kind.of(noun.word()), noun.end()));
      observer.found(span(place, noun.end()), new Meaning.OfNoun(noun.word()));
    }
    for (Kind kind : terms.all()) {
      String words = plural ? kind.plural() : kind.singular();
      List<String> parts = List.of(words.split(" "));
      int end = parts.get(0).equals(word(place)) ? matchEnd(parts, place) : -1;
      if (end >= 0) {
        found.add(new Found<>(kind, end));
        Term term = kind.term();
        if (term != null) {
          observer.found(span(place, end), new Meaning.OfTerm(term));
        }
      }
    }
    return found;
  }

  /** All nouns and terms, as they are called. */
  List<String> kindWords(boolean plural) {
    return kinds().stream().map(plural ? Kind::plural : Kind::singular).toList();
  }

  /** All nouns and terms. */
  List<Kind> kinds() {
    List<Kind> all = new ArrayList<>();
    dictionary.vocabulary().nouns().forEach(noun -> all.add(Kind.of(noun)));
    all.addAll(terms.all());
    return all;
  }

  /** What is wrong with the use of a term whose definition has not been read. */
  @Nullable Diagnostic early(Found<Kind> found, int place) {
    Kind kind = found.word();
    if (!kind.isTerm() || kind.term() != null) {
      return null;
    }
    return Problems.error(
        DiagnosticCode.EARLY_TERM,
        span(place, found.end()),
        terms.isCurrent(kind)
            ? "The term " + quoted(kind) + " is used in its own definition."
            : "The term " + quoted(kind) + " is defined further down.",
        terms.isCurrent(kind)
            ? "Say it with other words: a term can use the vocabulary and the terms before it."
            : "Put its definition first: a term can use only terms that stand before it.");
  }

  /** A word of the vocabulary and where it ends. */
  record Found<T>(T word, int end) {}

  void step() {
    steps++;
  }

  /** The condition in {@code (where ...)} at an item, if one stands there. */
  Optional<Result<Condition>> where(int place, Scope inner) {
    if (!(item(place) instanceof Phrase.WhereItem where)) {
      return Optional.empty();
    }
    Key key = new Key("where", place, inner, null);
    List<?> known = memo.get(key);
    if (known == null) {
      known = List.of(nested.condition(where.condition(), inner));
      memo.put(key, known);
    }
    @SuppressWarnings("unchecked") // the key's kind fixes the type
    Result<Condition> result = (Result<Condition>) known.get(0);
    return Optional.of(result);
  }

  static String quoted(Object words) {
    return English.quoted(words.toString());
  }
}
