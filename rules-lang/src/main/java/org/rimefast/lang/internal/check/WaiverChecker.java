package org.rimefast.lang.internal.check;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.message.Nearest;
import org.rimefast.lang.internal.resolve.Constants;
import org.rimefast.lang.internal.resolve.Dictionary;
import org.rimefast.lang.internal.resolve.Problems;
import org.rimefast.lang.internal.resolve.ReadingObserver;
import org.rimefast.lang.internal.resolve.Result;
import org.rimefast.lang.internal.resolve.Tables;
import org.rimefast.lang.internal.resolve.Terms;
import org.rimefast.lang.internal.syntax.Phrase;
import org.rimefast.lang.internal.syntax.Statement;
import org.rimefast.lang.internal.syntax.Word;
import org.rimefast.lang.rule.Constant;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.rule.Waiver;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Noun;

/** Checks the statements of a file of waivers against the standard that they are for. */
public final class WaiverChecker {
  private final Standard standard;
  private final SourceText source;
  private final OperandReader operands;
  private final List<Diagnostic> diagnostics = new ArrayList<>();
  private Statement.@Nullable Waivers header;

  /** A checker for one text. */
  public WaiverChecker(Dictionary dictionary, Standard standard, SourceText source) {
    this(dictionary, standard, source, ReadingObserver.NONE);
  }

  /** A checker for one text, which tells the observer what it finds. */
  public WaiverChecker(
      Dictionary dictionary, Standard standard, SourceText source, ReadingObserver observer) {
    this.standard = standard;
    this.source = source;
    Map<String, Constant> constants = new LinkedHashMap<>();
    standard.constants().forEach(constant -> constants.put(constant.name(), constant));
    Terms terms = new Terms();
    standard
        .terms()
        .forEach(
            term -> {
              terms.announce(term.singular(), term.plural(), term.noun());
              terms.define(term);
            });
    operands =
        new OperandReader(
            dictionary,
            new Constants(constants),
            terms,
            new Tables(standard.tables()),
            source,
            observer);
  }

  /** What is wrong with the statements. */
  public List<Diagnostic> diagnostics() {
    return diagnostics;
  }

  /** The title of the file; may be empty. */
  public String title() {
    return Optional.ofNullable(header)
        .flatMap(found -> new Fields(found.fields(), new ArrayList<>()).text("title"))
        .orElse("");
  }

  /**
   * The typed waivers that make sense, in the order written.
   *
   * @param isWhole false if some statement could not be read, so that a missing one is no news
   */
  public List<Waiver> check(List<Statement> statements, boolean isWhole) {
    List<Waiver> waivers = new ArrayList<>();
    for (Statement statement : statements) {
      if (statement instanceof Statement.Waivers found) {
        header(found, statements.get(0).equals(found));
      } else if (statement instanceof Statement.Waive waive) {
        waiver(waive).ifPresent(waivers::add);
      } else {
        diagnostics.add(
            Problems.error(
                DiagnosticCode.MISPLACED_STATEMENT,
                statement.span(),
                "A file of waivers holds nothing but waivers.",
                "Put constants, rules and inspect items into the standard."));
      }
    }
    if (header == null && isWhole) {
      diagnostics.add(
          Problems.error(
              DiagnosticCode.MISSING_WAIVERS,
              new Span(0, 0),
              "The text does not say which standard its waivers are for.",
              "Begin with: waivers for " + standard.name()));
    }
    return waivers;
  }

  private void header(Statement.Waivers found, boolean isFirst) {
    Fields fields = new Fields(found.fields(), diagnostics);
    fields.refuse(List.of("caution"), "A file of waivers");
    Statement.Waivers first = header;
    Word name = found.standard();
    if (first != null) {
      diagnostics.add(
          Problems.related(
              DiagnosticCode.MISPLACED_STANDARD,
              name.span(),
              "A file of waivers is for one standard, and this is the second.",
              "Put these waivers in a file of their own.",
              List.of(new Diagnostic.Related(first.standard().span(), "the first one is here"))));
      return;
    }
    header = found;
    if (!isFirst) {
      diagnostics.add(
          Problems.error(
              DiagnosticCode.MISPLACED_STANDARD,
              name.span(),
              "The standard is named before the waivers.",
              "Move this statement to the top of the text."));
    }
    if (!name.text().equals(standard.name())) {
      diagnostics.add(
          Problems.fixable(
              DiagnosticCode.OTHER_STANDARD,
              name.span(),
              "These waivers are for "
                  + English.shortened(name.text())
                  + ", and the plan is checked against "
                  + standard.name()
                  + ".",
              "Name the file of waivers for this standard, or write: waivers for "
                  + standard.name(),
              name.span(),
              standard.name()));
    }
  }

  private Optional<Waiver> waiver(Statement.Waive waive) {
    Fields fields = new Fields(waive.fields(), diagnostics);
    fields.refuse(List.of("severity", "stage", "source"), "A waiver");
    Optional<Rule> rule = rule(waive.rule());
    RuleParts parts = new RuleParts(fields, waive.rule(), "waiver of", "", diagnostics);
    Optional<String> because = parts.required("because", "because \"the bay is kept free\"");
    Optional<String> approver = parts.required("approved by", "approved by \"the engineer\"");
    Optional<LocalDate> from = date(fields, parts, "from", "from 2026-11-01");
    Optional<LocalDate> until = date(fields, parts, "until", "until 2027-03-31");
    boolean period = isPeriod(fields, from, until);
    Optional<Waiver.Selection> selection = selection(waive, rule);
    Optional<Waiver.Bound> bound = Optional.empty();
    boolean bounded = fields.word("down to").or(() -> fields.word("up to")).isPresent();
    if (bounded && rule.isPresent()) {
      bound = new WaiverBound(fields, diagnostics).of(rule.get());
    }
    if (rule.isEmpty() || because.isEmpty() || approver.isEmpty() || !period) {
      return Optional.empty();
    }
    if (selection.isPresent() != waive.subject().isPresent() || bound.isPresent() != bounded) {
      return Optional.empty();
    }
    return Optional.of(
        new Waiver(
            waive.rule().text(),
            waive.elements().stream().map(Word::text).distinct().toList(),
            selection,
            waive.targetText(),
            fields.text("in plan"),
            because.get(),
            approver.get(),
            from.orElseThrow(),
            until.orElseThrow(),
            bound,
            source,
            waive.span()));
  }

  private Optional<Rule> rule(Word id) {
    Optional<Rule> rule = standard.rule(id.text());
    if (rule.isEmpty()) {
      List<String> near = Nearest.to(id.text(), standard.rules().stream().map(Rule::id).toList());
      String headline =
          "The standard "
              + standard.name()
              + " has no rule "
              + English.quoted(English.shortened(id.text()))
              + ".";
      diagnostics.add(
          near.isEmpty()
              ? Problems.error(
                  DiagnosticCode.UNKNOWN_RULE,
                  id.span(),
                  headline,
                  "Write the id of one of its rules or inspect items, as findings show it.")
              : Problems.fixable(
                  DiagnosticCode.UNKNOWN_RULE,
                  id.span(),
                  headline,
                  "Did you mean " + English.quoted(near.get(0)) + "?",
                  id.span(),
                  near.get(0)));
    }
    return rule;
  }

  private Optional<LocalDate> date(Fields fields, RuleParts parts, String key, String example) {
    Optional<Word> written = fields.word(key);
    if (written.isEmpty()) {
      parts.required(key, example);
      return Optional.empty();
    }
    String text = written.get().text();
    boolean isDate = text.matches("[0-9]{4}-[0-9]{2}-[0-9]{2}");
    if (isDate) {
      try {
        return Optional.of(
            LocalDate.of(
                Integer.parseInt(text, 0, 4, 10),
                Integer.parseInt(text, 5, 7, 10),
                Integer.parseInt(text, 8, 10, 10)));
      } catch (DateTimeException e) {
        diagnostics.add(
            Problems.error(
                DiagnosticCode.BAD_DATE,
                written.get().span(),
                "There is no day " + text + ".",
                "Look it up in a calendar."));
        return Optional.empty();
      }
    }
    diagnostics.add(
        Problems.error(
            DiagnosticCode.BAD_DATE,
            written.get().span(),
            English.quoted(English.shortened(text)) + " is no date.",
            "Write year, month and day: " + example));
    return Optional.empty();
  }

  private boolean isPeriod(Fields fields, Optional<LocalDate> from, Optional<LocalDate> until) {
    if (from.isEmpty() || until.isEmpty()) {
      return false;
    }
    if (until.get().isBefore(from.get())) {
      diagnostics.add(
          Problems.error(
              DiagnosticCode.WRONG_PERIOD,
              fields.word("until").orElseThrow().span(),
              "The waiver ends before it begins on " + from.get() + ".",
              "Write the first day behind \"from\" and the last one behind \"until\"."));
      return false;
    }
    return true;
  }

  private Optional<Waiver.Selection> selection(Statement.Waive waive, Optional<Rule> rule) {
    if (waive.subject().isEmpty()) {
      return Optional.empty();
    }
    List<Phrase.Item> items = waive.subject().get().items();
    if (items.get(0) instanceof Phrase.TextItem && items.size() > 1) {
      Span further = items.get(1).span();
      diagnostics.add(
          Problems.error(
              DiagnosticCode.UNREADABLE,
              further,
              "After the elements comes a part of the waiver, not "
                  + English.quoted(English.shortened(source.textOf(further)))
                  + ".",
              "The parts are in plan \"...\", because, approved by, from and until with a date, and"
                  + " down to or up to with a number."));
      return Optional.empty();
    }
    Result<SentenceChecker.Target> target =
        new SentenceChecker(operands, SentenceChecker.Use.WAIVE)
            .target(waive.subject().get(), waive.where());
    diagnostics.addAll(target.problems());
    if (!target.isOk()) {
      return Optional.empty();
    }
    Noun noun = target.get().subject().noun();
    if (rule.isPresent()) {
      Noun asked = rule.get().subject().noun();
      if (!noun.isA(asked) && !asked.isA(noun)) {
        diagnostics.add(
            Problems.error(
                DiagnosticCode.WRONG_ELEMENT,
                waive.subject().get().span(),
                "The rule "
                    + rule.get().id()
                    + " speaks of "
                    + asked.plural()
                    + ", not of "
                    + noun.plural()
                    + ".",
                "Write for example: for each " + asked.singular()));
        return Optional.empty();
      }
    }
    return Optional.of(new Waiver.Selection(target.get().subject(), target.get().where()));
  }
}
