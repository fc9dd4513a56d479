package org.rimefast.lang.internal.complete;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rimefast.lang.internal.check.Known;
import org.rimefast.lang.internal.check.Probe;
import org.rimefast.lang.internal.syntax.Piece;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Severity;
import org.rimefast.lang.rule.Term;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Link;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.units.Unit;
import org.rimefast.units.Units;

/** Finds what can stand at a place. */
public final class Completer {
  /** What can stand there, in order of use, and the text that it takes the place of. */
  public record Completion(Span replaces, List<Candidate> candidates) {
    /** Copies the list. */
    public Completion {
      candidates = List.copyOf(candidates);
    }
  }

  private static final List<String> SENTENCE_WORDS =
      List.of(
          "must",
          "must not",
          "have",
          "be",
          "not",
          "with",
          "where",
          "if",
          "unless",
          "and",
          "or",
          "is",
          "is not",
          "are",
          "are not",
          "has",
          "does not",
          "do not",
          "each",
          "every",
          "for each");

  /** Before a limit, and before how many of a kind. */
  private static final List<String> BOUNDS =
      List.of("at least", "at most", "more than", "less than", "exactly");

  /** Words that are right only if the readers take them for what they are. */
  private static final List<String> SMALL_WORDS =
      List.of(
          "it",
          "its",
          "the",
          "a",
          "an",
          "each",
          "every",
          "some",
          "no",
          "another",
          "of",
          "there is a",
          "there is no",
          "there must be a");

  private static final List<String> OF_MANY =
      List.of("number of", "total", "smallest", "largest", "average");

  private static final List<String> SIGNS = List.of(">=", "<=", ">", "<", "=", "!=", ",");

  private static final List<String> PARTS =
      List.of(
          "severity",
          "stage",
          "because",
          "source",
          "title",
          "caution",
          "builds on",
          "edition",
          "be");

  private final Known known;
  private final Setting setting;
  private final String text;
  private final Span file;
  private final List<List<Piece>> statements;

  /**
   * A finder for one file.
   *
   * @param text the text of all files
   * @param file where the file stands in it
   * @param statements the pieces of each of the file's statements
   */
  public Completer(
      Known known, Setting setting, String text, Span file, List<List<Piece>> statements) {
    this.known = known;
    this.setting = setting;
    this.text = text;
    this.file = file;
    this.statements = statements;
  }

  /** What can stand at an offset; nothing within quotes and comments. */
  public Completion at(int offset) {
    return Cursor.at(text, file, statements, offset)
        .map(cursor -> new Completion(cursor.word(), candidates(cursor)))
        .orElseGet(() -> new Completion(new Span(offset, offset), List.of()));
  }

  private List<Candidate> candidates(Cursor cursor) {
    if (cursor.startsLine() || cursor.pieces().isEmpty()) {
      return setting.beginnings(statements.stream().anyMatch(this::isHeader)).stream()
          .map(word -> new Candidate(word, Candidate.Kind.PART))
          .toList();
    }
    Optional<List<Candidate>> other = new OtherStatements(this, setting, cursor).candidates();
    if (other.isPresent()) {
      return other.get();
    }
    return switch (cursor.lastPiece()) {
      case "severity" ->
          List.of(Severity.values()).stream()
              .map(severity -> new Candidate(severity.word(), Candidate.Kind.PART_VALUE))
              .toList();
      case "stage" ->
          stages().stream().map(stage -> new Candidate(stage, Candidate.Kind.PART_VALUE)).toList();
      case "source" ->
          List.of(new Candidate("\"common practice, no source\"", Candidate.Kind.PART_VALUE));
      default -> judged(cursor);
    };
  }

  List<String> stages() {
    return known.dictionary().vocabulary().stages();
  }

  private boolean isHeader(List<Piece> statement) {
    Span first = statement.get(0).span();
    return text.substring(first.start(), first.end()).equals("standard");
  }

  private List<Candidate> judged(Cursor cursor) {
    Judge judge = judge(cursor, cursor.stem());
    Map<String, Candidate> good = sentence(judge, cursor);
    for (String part : PARTS) {
      offer(part, Candidate.Kind.PART, isPart(part, cursor) && judge.leads(part), good);
    }
    return List.copyOf(good.values());
  }

  /** A judge of what stands behind a text, at a place. */
  Judge judge(Cursor cursor, String stem) {
    return new Judge(new Probe(known, new Span(cursor.statement(), file.end())), stem);
  }

  /** What of a sentence can stand there. */
  Map<String, Candidate> sentence(Judge judge, Cursor cursor) {
    Map<String, Candidate> good = new LinkedHashMap<>();
    if (isBareNumber(cursor.lastPiece())) {
      for (Unit unit : Units.all()) {
        if (!unit.symbol().isEmpty()) {
          offer(unit.symbol(), Candidate.Kind.UNIT, judge.fits(unit.symbol()), good);
        }
      }
    }
    for (String word : judge.heard().words()) {
      offer(word, kindOf(word), judge.fits(word), good);
    }
    for (String phrase : ofOthers(judge.heard())) {
      offer(phrase, Candidate.Kind.WORD, judge.fits(phrase), good);
    }
    for (String word : SMALL_WORDS) {
      offer(word, Candidate.Kind.KEYWORD, judge.opens(word, word.equals("its")), good);
    }
    for (String word : SENTENCE_WORDS) {
      offer(word, Candidate.Kind.KEYWORD, judge.leads(word), good);
    }
    for (String word : OF_MANY) {
      boolean number = !judge.heard().wantsWord();
      offer(word, Candidate.Kind.KEYWORD, number && judge.opens(word, false), good);
    }
    for (String bound : BOUNDS) {
      offer(bound, Candidate.Kind.KEYWORD, judge.limits(bound) || counts(judge, bound), good);
      offer("of " + bound, Candidate.Kind.KEYWORD, judge.limits("of " + bound), good);
    }
    arithmetic(judge, isBareNumber(cursor.lastPiece()), good);
    for (String sign : SIGNS) {
      offer(sign, Candidate.Kind.SIGN, judge.leads(sign), good);
    }
    return good;
  }

  private static void arithmetic(Judge judge, boolean bare, Map<String, Candidate> good) {
    boolean product = judge.reckons("times 2");
    boolean sum = product || judge.reckons("+ 1 K");
    boolean scale =
        bare
            && good.values().stream()
                .filter(candidate -> candidate.kind() == Candidate.Kind.UNIT)
                .anyMatch(unit -> judge.fits("times 1 " + unit.text()));
    // What a number without a unit is to be can only be said by what it is multiplied with.
    offer("times", Candidate.Kind.SIGN, bare ? scale : product, good);
    offer("divided by", Candidate.Kind.SIGN, !bare && product, good);
    offer("+", Candidate.Kind.SIGN, !bare && sum, good);
    offer("-", Candidate.Kind.SIGN, !bare && sum, good);
  }

  /** {@code at least 2 studs}. */
  private boolean counts(Judge judge, String bound) {
    return known.dictionary().vocabulary().nouns().stream()
        .findFirst()
        .filter(noun -> judge.fits(bound + " 2 " + noun.plural()))
        .isPresent();
  }

  static void offer(String word, Candidate.Kind kind, boolean fits, Map<String, Candidate> good) {
    if (fits && !word.isEmpty()) {
      good.putIfAbsent(word, new Candidate(word, kind));
    }
  }

  static boolean isBareNumber(String piece) {
    return !piece.isEmpty()
        && piece.chars().allMatch(c -> (c >= '0' && c <= '9') || "./-".indexOf(c) >= 0)
        && piece.chars().anyMatch(Character::isDigit);
  }

  private Candidate.Kind kindOf(String word) {
    boolean name =
        known.constants().containsKey(word)
            || known.terms().stream().anyMatch(term -> isCalled(term, word));
    return name ? Candidate.Kind.NAME : Candidate.Kind.WORD;
  }

  private static boolean isCalled(Term term, String word) {
    return word.equals(term.plural())
        || word.equals(term.singular())
        || word.endsWith(" " + term.singular());
  }

  /** Properties of what a link leads to, and of elements that have been spoken of. */
  private Set<String> ofOthers(Judge.Heard heard) {
    Set<String> phrases = new LinkedHashSet<>();
    for (Judge.Asked asked : heard.values()) {
      Noun it = asked.scope().it().noun();
      for (Link link : known.dictionary().vocabulary().links()) {
        if (it.isA(link.owner())) {
          properties(link.target(), asked, "its " + link.phrase(), phrases);
        }
      }
      asked.scope().spoken().stream()
          .filter(spoken -> !new Reference.Bound(spoken.variable()).equals(asked.scope().bare()))
          .forEach(
              spoken ->
                  properties(spoken.variable().noun(), asked, "the " + spoken.called(), phrases));
    }
    return phrases;
  }

  private void properties(Noun owner, Judge.Asked asked, String named, Set<String> phrases) {
    for (Property property : known.dictionary().vocabulary().properties()) {
      boolean wanted =
          asked.wanted().isEmpty() || isLike(property.type(), asked.wanted().orElseThrow());
      if (owner.isA(property.owner()) && property.slots().isEmpty() && wanted) {
        phrases.add(property.pattern() + " of " + named);
      }
    }
  }

  private static boolean isLike(ValueType a, ValueType b) {
    return (a instanceof ValueType.Number x && b instanceof ValueType.Number y)
        ? x.dimension().equals(y.dimension())
        : a.equals(b);
  }

  /** False if the statement cannot have the part, or has it before or behind the place. */
  private boolean isPart(String part, Cursor cursor) {
    boolean let = cursor.firstPiece().equals("let");
    return !(let && (part.equals("severity") || part.equals("stage"))) && !isGiven(part, cursor);
  }

  /** True if the statement has the part, before or behind the place. */
  boolean isGiven(String part, Cursor cursor) {
    String first = part.replaceAll(" .*", "");
    for (List<Piece> statement : statements) {
      if (statement.get(0).span().start() == cursor.statement()) {
        return statement.stream()
            .filter(piece -> !piece.span().equals(cursor.word()))
            .filter(piece -> piece.kind() == Piece.Kind.PART)
            .anyMatch(
                piece -> text.substring(piece.span().start(), piece.span().end()).equals(first));
      }
    }
    return false;
  }
}
