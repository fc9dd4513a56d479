package org.rimefast.lang.internal.complete;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.internal.check.Probe;
import org.rimefast.lang.internal.grammar.StatementReader;
import org.rimefast.lang.internal.resolve.ReadingObserver;
import org.rimefast.lang.internal.resolve.Scope;
import org.rimefast.lang.internal.syntax.Piece;
import org.rimefast.lang.rule.Meaning;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.ValueType;

/** Asks the compiler whether a candidate can stand at a place. */
final class Judge {
  /** A word that no vocabulary has: two small letters n above the line. */
  static final String MARK = "\u207f\u207f";

  /** What readers looked for where the mark stands. */
  record Heard(Set<String> words, List<Asked> values) {
    /** True if only a word of a list or a text could stand there, which have no order. */
    boolean wantsWord() {
      return !values.isEmpty()
          && values.stream()
              .allMatch(
                  asked ->
                      asked
                          .wanted()
                          .filter(type -> !(type instanceof ValueType.Number))
                          .isPresent());
    }
  }

  /** A value that was looked for, and in which scope. */
  record Asked(Scope scope, Optional<ValueType> wanted) {}

  private record Said(DiagnosticCode code, Span span) {}

  private final Probe probe;
  private final String stem;
  private final Set<Said> known = new HashSet<>();
  private final Heard heard;

  /** A judge of what stands behind {@code stem}. */
  Judge(Probe probe, String stem) {
    this.probe = probe;
    this.stem = stem;
    Listener listener = new Listener(new Span(stem.length(), stem.length() + MARK.length()));
    Probe.Outcome outcome = read(stem + MARK, listener);
    this.heard = listener.heard();
    for (Diagnostic diagnostic : outcome.diagnostics()) {
      // What is wrong before the place is no fault of a candidate.
      if (diagnostic.span().end() < stem.stripTrailing().length()) {
        known.add(new Said(diagnostic.code(), diagnostic.span()));
      }
    }
  }

  Heard heard() {
    return heard;
  }

  /** True if the candidate, as the last thing written so far, is right or only unfinished. */
  boolean fits(String candidate) {
    Probe.Outcome outcome = read(stem + candidate, ReadingObserver.NONE);
    return outcome.readable() ? isGood(outcome, candidate, true) : leads(candidate);
  }

  /** True if something can follow the candidate. */
  boolean leads(String candidate) {
    if (candidate.startsWith(">") || candidate.startsWith("<")) {
      return limits(candidate);
    }
    Probe.Outcome marked = read(stem + candidate + " " + MARK, ReadingObserver.NONE);
    if (marked.readable() || !isGood(marked, candidate, false)) {
      return isGood(marked, candidate, false);
    }
    Probe.Outcome text = read(stem + candidate + " \"" + MARK + "\"", ReadingObserver.NONE);
    Probe.Outcome asked = text.readable() ? text : read(stem + candidate, ReadingObserver.NONE);
    return isGood(asked, candidate, false);
  }

  /** True if a limit can follow the candidate, and what it limits has an order. */
  boolean limits(String candidate) {
    Listener listener = new Listener(markAt(stem.length() + candidate.length() + 1));
    Probe.Outcome marked = read(stem + candidate + " " + MARK, listener);
    return isGood(marked, candidate, false) && !listener.heard().wantsWord();
  }

  /**
   * True if a word can follow the candidate that fits in its turn.
   *
   * @param whole true if with that word the phrase must be whole
   */
  boolean opens(String candidate, boolean whole) {
    if (!fits(candidate)) {
      return false;
    }
    Listener listener = new Listener(markAt(stem.length() + candidate.length() + 1));
    read(stem + candidate + " " + MARK, listener);
    return listener.words.stream()
        .map(word -> candidate + " " + word)
        .anyMatch(phrase -> fits(phrase) && !(whole && isUnfinished(phrase)));
  }

  private boolean isUnfinished(String candidate) {
    return read(stem + candidate, ReadingObserver.NONE).diagnostics().stream()
        .anyMatch(
            diagnostic ->
                diagnostic.code() == DiagnosticCode.UNFINISHED_PHRASE
                    && diagnostic.span().end() == stem.length() + candidate.length());
  }

  /** True if the sum or product makes sense as a value, whatever it is then compared with. */
  boolean reckons(String sum) {
    Probe.Outcome compared = read(stem + sum + " >= " + MARK, ReadingObserver.NONE);
    return compared.readable() ? isGood(compared, sum, true) : fits(sum);
  }

  private static Span markAt(int start) {
    return new Span(start, start + MARK.length());
  }

  private boolean isGood(Probe.Outcome outcome, String candidate, boolean last) {
    int end = stem.length() + candidate.length();
    for (Diagnostic diagnostic : outcome.diagnostics()) {
      Span span = diagnostic.span();
      boolean unfinished =
          last
              && (diagnostic.code() == DiagnosticCode.MISSING_COMPARISON
                  || diagnostic.code() == DiagnosticCode.UNFINISHED_PHRASE)
              && span.end() >= end;
      if (span.start() < end && !unfinished && !known.contains(new Said(diagnostic.code(), span))) {
        return false;
      }
    }
    return true;
  }

  private Probe.Outcome read(String text, ReadingObserver observer) {
    return probe.read(text + closing(text), observer);
  }

  /** What a sentence that breaks off here still needs to be read at all. */
  private static String closing(String text) {
    List<List<Piece>> statements = StatementReader.pieces(new SourceText("", text));
    if (statements.isEmpty()) {
      return "";
    }
    int open = 0;
    boolean must = false;
    boolean comma = false;
    boolean forEach = false;
    boolean part = false;
    boolean sentence = false;
    for (Piece piece : statements.get(0)) {
      String word = text.substring(piece.span().start(), piece.span().end());
      sentence |= piece.kind() == Piece.Kind.TEXT;
      open += piece.kind() == Piece.Kind.LEFT ? 1 : piece.kind() == Piece.Kind.RIGHT ? -1 : 0;
      must |= word.equals("must");
      comma |= piece.kind() == Piece.Kind.COMMA;
      forEach |= word.equals("for");
      part |= piece.kind() == Piece.Kind.PART;
    }
    String closed = ")".repeat(Math.max(0, open));
    if (!text.startsWith("rule") || must || part || !sentence) {
      return closed;
    }
    return closed + (forEach && !comma ? ", it" : "") + " must be " + MARK;
  }

  /** Listens to what readers look for at one item. */
  private static final class Listener implements ReadingObserver {
    private final Span item;
    private final Set<String> words = new LinkedHashSet<>();
    private final List<Asked> values = new ArrayList<>();

    Listener(Span item) {
      this.item = item;
    }

    Heard heard() {
      return new Heard(words, values);
    }

    @Override
    public boolean asksAbout(Span span) {
      return span.equals(item);
    }

    @Override
    public void expected(Collection<String> more) {
      words.addAll(more);
    }

    @Override
    public void value(Scope scope, @Nullable ValueType wanted) {
      values.add(new Asked(scope, Optional.ofNullable(wanted)));
    }

    @Override
    public void found(Span span, Meaning meaning) {}
  }
}
