package org.rimefast.lang.tooling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.Compilation;
import org.rimefast.lang.Limits;
import org.rimefast.lang.internal.check.Known;
import org.rimefast.lang.internal.check.StandardChecker;
import org.rimefast.lang.internal.complete.Candidate;
import org.rimefast.lang.internal.complete.Completer;
import org.rimefast.lang.internal.grammar.StatementReader;
import org.rimefast.lang.internal.layer.Layer;
import org.rimefast.lang.internal.resolve.Dictionary;
import org.rimefast.lang.internal.syntax.Piece;
import org.rimefast.lang.internal.syntax.Statement;
import org.rimefast.lang.rule.Constant;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.rule.Term;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;

/**
 * One text, compiled and kept for questions. What has faults is answered as far as it can be read.
 * Safe to share between threads.
 */
public final class Analysis {
  /** Texts with these are read by nobody. */
  private static final Set<DiagnosticCode> UNFIT =
      Set.of(
          DiagnosticCode.TEXT_TOO_LONG,
          DiagnosticCode.BIDIRECTIONAL_CONTROL,
          DiagnosticCode.UNPAIRED_SURROGATE);

  private record Read(
      List<List<Piece>> pieces, Known known, List<Rule> rules, List<Mention> mentions) {}

  private final Dictionary dictionary;
  private final Compilation compilation;
  private @Nullable Read read;

  Analysis(Dictionary dictionary, Compilation compilation) {
    this.dictionary = dictionary;
    this.compilation = compilation;
  }

  /** What came of compiling the text. */
  public Compilation compilation() {
    return compilation;
  }

  /** The text. */
  public SourceText source() {
    return compilation.source();
  }

  /** The statements, in the order of the text. */
  public List<OutlineEntry> outline() {
    List<OutlineEntry> entries = new ArrayList<>();
    for (List<Piece> statement : read().pieces()) {
      Outlines.entry(source(), statement).ifPresent(entries::add);
    }
    return entries;
  }

  /**
   * Every place where a word of the vocabulary or a name of the standard stands, in the order of
   * the text; one within another comes after it. Statements that cannot be read have none.
   */
  public List<Mention> mentions() {
    return read().mentions();
  }

  /** The narrowest mention around an offset, its ends included. */
  public Optional<Mention> mentionAt(int offset) {
    return read().mentions().stream()
        .filter(m -> m.span().start() <= offset && offset <= m.span().end())
        .min(Comparator.comparingInt(m -> m.span().end() - m.span().start()));
  }

  /** The constants that the text defines, in the order written. */
  public List<Constant> constants() {
    return List.copyOf(read().known().constants().values());
  }

  /** The terms that the text defines, in the order written; also one with a fault. */
  public List<Term> terms() {
    return read().known().terms();
  }

  /** The rules that are right, in the order written, whatever else is wrong with the text. */
  public List<Rule> rules() {
    return read().rules();
  }

  /**
   * What can stand at an offset: each proposal, written there, is right or only unfinished. Within
   * quotes and comments there is nothing to propose.
   */
  public Proposals proposals(int offset) {
    Read ready = read();
    if (isUnfit()) {
      return new Proposals(new Span(offset, offset), List.of());
    }
    Completer completer = new Completer(ready.known(), source().text(), ready.pieces());
    Completer.Completion completion = completer.at(offset);
    return new Proposals(
        completion.replaces(), completion.candidates().stream().map(Analysis::proposal).toList());
  }

  private static Proposal proposal(Candidate candidate) {
    return new Proposal(candidate.text(), Proposal.Kind.valueOf(candidate.kind().name()));
  }

  private boolean isUnfit() {
    return compilation.diagnostics().stream().anyMatch(d -> UNFIT.contains(d.code()));
  }

  private synchronized Read read() {
    Read ready = read;
    if (ready == null) {
      ready = newRead();
      read = ready;
    }
    return ready;
  }

  private Read newRead() {
    MentionCollector collector = new MentionCollector();
    if (isUnfit()) {
      Known nothing = new StandardChecker(dictionary, source()).known();
      return new Read(List.of(), nothing, List.of(), List.of());
    }
    List<Statement> statements =
        StatementReader.read(source(), Limits.DEFAULT.nesting(), 0).statements();
    StandardChecker checker = new StandardChecker(dictionary, source(), collector);
    List<Rule> rules =
        checker
            .check(List.of(new Layer(statements, 0, false)))
            .map(Standard::rules)
            .orElse(List.of());
    return new Read(
        StatementReader.pieces(source()),
        checker.known(),
        rules,
        collector.mentions(statements, checker.known()));
  }
}
