package org.rimefast.lang.tooling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.Limits;
import org.rimefast.lang.cases.Case;
import org.rimefast.lang.internal.check.Known;
import org.rimefast.lang.internal.complete.Candidate;
import org.rimefast.lang.internal.complete.Completer;
import org.rimefast.lang.internal.complete.Setting;
import org.rimefast.lang.internal.grammar.StatementReader;
import org.rimefast.lang.internal.layer.UnfitText;
import org.rimefast.lang.internal.syntax.Piece;
import org.rimefast.lang.rule.Constant;
import org.rimefast.lang.rule.Pin;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.rule.Term;
import org.rimefast.lang.rule.Withdrawal;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;

/**
 * A text with those that it includes and builds on, or a text of cases or waivers; compiled and
 * kept for questions. What has faults is answered as far as it can be read. Every place that it
 * tells lies in one of the files as their authors wrote them. Safe to share between threads.
 */
public final class Analysis {
  /**
   * What reading gave.
   *
   * @param pieces of each statement of each file; none of a file that nobody can read
   */
  record Read(
      List<List<List<Piece>>> pieces,
      Known known,
      Setting setting,
      List<Rule> rules,
      List<Withdrawal> withdrawn,
      List<Case> cases,
      List<Mention> mentions) {}

  private final SourceText source;
  private final Optional<Standard> standard;
  private final List<Diagnostic> diagnostics;
  private final List<Pin> pins;
  private final Supplier<Read> reading;
  private @Nullable Read read;

  Analysis(
      SourceText source,
      Optional<Standard> standard,
      List<Diagnostic> diagnostics,
      List<Pin> pins,
      Supplier<Read> reading) {
    this.source = source;
    this.standard = standard;
    this.diagnostics = diagnostics.stream().map(this::asWritten).toList();
    this.pins = List.copyOf(pins);
    this.reading = reading;
  }

  /** The text, with those that it includes and builds on; its own is the first file. */
  public SourceText source() {
    return source;
  }

  /** The typed standard, or the one that cases or waivers are for; empty if it has an error. */
  public Optional<Standard> standard() {
    return standard;
  }

  /** Everything found, in the order of the text. */
  public List<Diagnostic> diagnostics() {
    return diagnostics;
  }

  /** For each amendment of the standard itself whose rule is there, what it says of it. */
  public List<Pin> pins() {
    return pins;
  }

  /** The statements of the first file, in order. */
  public List<OutlineEntry> outline() {
    return outline(0);
  }

  /** The statements of a file, in order. */
  public List<OutlineEntry> outline(int part) {
    List<OutlineEntry> entries = new ArrayList<>();
    for (List<Piece> statement : read().pieces().get(part)) {
      Outlines.entry(source, statement).ifPresent(entries::add);
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

  /** The constants of the standard, in the order written. */
  public List<Constant> constants() {
    return List.copyOf(read().known().constants().values());
  }

  /** The terms of the standard, in the order written; also one with a fault. */
  public List<Term> terms() {
    return read().known().terms();
  }

  /** The rules that are right, as amended, in the order written, whatever else is wrong. */
  public List<Rule> rules() {
    return read().rules();
  }

  /** The rules that were taken out. */
  public List<Withdrawal> withdrawn() {
    return read().withdrawn();
  }

  /** The cases that make sense, in the order written; not those of standards that are built on. */
  public List<Case> cases() {
    return read().cases();
  }

  /**
   * What can stand at an offset: each proposal, written there, is right or only unfinished. Within
   * quotes and comments there is nothing to propose.
   */
  public Proposals proposals(int offset) {
    Read ready = read();
    int part = source.partAt(offset);
    if (!isFit(source.parts().get(part))) {
      return new Proposals(new Span(offset, offset), List.of());
    }
    boolean included = part > 0 && ready.setting().file() == Setting.File.STANDARD;
    Setting setting = included ? ready.setting().of(Setting.File.INCLUDED) : ready.setting();
    Completer completer =
        new Completer(
            ready.known(), setting, source.text(), source.spanOf(part), ready.pieces().get(part));
    Completer.Completion completion = completer.at(offset);
    return new Proposals(
        completion.replaces(), completion.candidates().stream().map(Analysis::proposal).toList());
  }

  private static Proposal proposal(Candidate candidate) {
    return new Proposal(candidate.text(), Proposal.Kind.valueOf(candidate.kind().name()));
  }

  /** The pieces of each statement of each file. */
  static List<List<List<Piece>>> pieces(SourceText source) {
    List<List<List<Piece>>> all = new ArrayList<>();
    for (int part = 0; part < source.parts().size(); part++) {
      all.add(isFit(source.parts().get(part)) ? StatementReader.pieces(source, part) : List.of());
    }
    return all;
  }

  private static boolean isFit(SourceText.Part part) {
    return UnfitText.problem(part.text(), Limits.DEFAULT.characters()).isEmpty();
  }

  /** The same without places in amended rules, which the compiler writes out behind the files. */
  private Diagnostic asWritten(Diagnostic told) {
    if (isWritten(told.span())
        && told.related().stream().allMatch(r -> isWritten(r.span()))
        && told.fixes().stream().allMatch(f -> isWritten(f.span()))) {
      return told;
    }
    return new Diagnostic(
        told.code(),
        told.level(),
        isWritten(told.span()) ? told.span() : new Span(0, 0),
        told.headline(),
        told.help(),
        told.related().stream().filter(related -> isWritten(related.span())).toList(),
        told.fixes().stream().filter(fix -> isWritten(fix.span())).toList());
  }

  private boolean isWritten(Span span) {
    return span.end() <= source.text().length();
  }

  synchronized Read read() {
    Read ready = read;
    if (ready == null) {
      ready = reading.get();
      read = ready;
    }
    return ready;
  }
}
