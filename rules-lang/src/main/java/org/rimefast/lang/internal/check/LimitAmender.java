package org.rimefast.lang.internal.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rimefast.lang.internal.meaning.Effects;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.message.Nearest;
import org.rimefast.lang.internal.resolve.Problems;
import org.rimefast.lang.internal.resolve.Typing;
import org.rimefast.lang.internal.syntax.Statement;
import org.rimefast.lang.internal.syntax.Word;
import org.rimefast.lang.rule.Change;
import org.rimefast.lang.rule.Constant;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.RuleUses;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.units.Quantity;

/** Gives a number of a rule, or a constant in it, another value. */
final class LimitAmender {
  private final RuleWriter writer;
  private final List<Diagnostic> diagnostics;

  LimitAmender(RuleWriter writer, List<Diagnostic> diagnostics) {
    this.writer = writer;
    this.diagnostics = diagnostics;
  }

  Optional<Amending> amend(
      Statement.Amendment amendment,
      Statement.Change.OfLimit change,
      Rule rule,
      Map<String, Constant> own,
      Optional<String> because,
      Optional<String> source) {
    RuleWriter.Written written = writer.alone(rule, own);
    String name = String.join(" ", change.words().stream().map(Word::text).toList());
    if (name.equals("the limit")) {
      return literal(change, written, own);
    }
    Optional<Constant> constant = constant(change, name, written);
    if (constant.isEmpty()) {
      return Optional.empty();
    }
    Quantity before = constant.get().value().quantity();
    Quantity after = change.after().quantity();
    Optional<Value.Literal> fresh = fitting(name, constant.get().value().type(), change.after());
    if (fresh.isEmpty()) {
      return Optional.empty();
    }
    Map<String, Constant> more = new LinkedHashMap<>(own);
    more.put(name, new Constant(name, fresh.get(), because, source, amendment.span()));
    return Optional.of(
        new Amending(
            writer.alone(written.rule(), more).rule(),
            more,
            Change.Kind.CONSTANT,
            name,
            name + ": " + before.text(),
            name + ": " + after.text(),
            Effects.ofNumber(
                written.rule(),
                value -> value instanceof Value.Named n && n.constant().name().equals(name),
                before.si(),
                after.si())));
  }

  private Optional<Constant> constant(
      Statement.Change.OfLimit change, String name, RuleWriter.Written written) {
    Map<String, Constant> used = RuleUses.ofSentence(written.rule()).constants();
    Constant found = used.get(name);
    Span span = change.words().get(0).span();
    span = span.to(change.words().get(change.words().size() - 1).span());
    String id = written.rule().id();
    if (found == null) {
      List<String> near = Nearest.to(name, used.keySet());
      String headline =
          writer.constants().containsKey(name)
              ? "The sentence of rule " + id + " does not name " + English.quoted(name) + "."
              : "The rule "
                  + id
                  + " has nothing called "
                  + English.quoted(English.shortened(name))
                  + ".";
      diagnostics.add(
          near.isEmpty()
              ? Problems.error(DiagnosticCode.NOTHING_TO_AMEND, span, headline, limits(written))
              : Problems.fixable(
                  DiagnosticCode.NOTHING_TO_AMEND,
                  span,
                  headline,
                  "Did you mean " + English.quoted(near.get(0)) + "? " + limits(written),
                  span,
                  near.get(0)));
      return Optional.empty();
    }
    Optional<Statement.Number> before = change.before();
    if (before.isPresent() && !isEqual(before.get().quantity(), found.value().quantity())) {
      diagnostics.add(
          Problems.fixable(
              DiagnosticCode.NOTHING_TO_AMEND,
              before.get().span(),
              "In rule " + id + ", " + name + " is " + found.value().quantity().text() + ".",
              "Write that, or leave the old value out: "
                  + name
                  + " is "
                  + change.after().quantity().text(),
              before.get().span(),
              found.value().quantity().text()));
      return Optional.empty();
    }
    return Optional.of(found);
  }

  private Optional<Amending> literal(
      Statement.Change.OfLimit change, RuleWriter.Written written, Map<String, Constant> own) {
    Optional<Value.Literal> found = find(change, written);
    Optional<Value.Literal> fresh =
        found.flatMap(
            literal ->
                fitting("the limit " + literal.quantity().text(), literal.type(), change.after()));
    if (found.isEmpty() || fresh.isEmpty()) {
      return Optional.empty();
    }
    Span span = found.get().span();
    String sentence = written.rule().sentence();
    int start = span.start() - written.rule().sentenceSpan().start();
    String after = change.after().quantity().text();
    String amended =
        sentence.substring(0, start)
            + after
            + sentence.substring(start + span.end() - span.start());
    RuleWriter.Attempt attempt = writer.attempt(written.rule(), amended, own);
    if (attempt.written().isEmpty()) {
      diagnostics.add(
          Problems.error(
              DiagnosticCode.NOTHING_TO_AMEND,
              change.after().span(),
              "With this limit the rule cannot be read: " + attempt.problems().get(0).headline(),
              "Withdraw the rule and write it anew."));
      return Optional.empty();
    }
    String before = found.get().quantity().text();
    return Optional.of(
        new Amending(
            attempt.written().get(0).rule(),
            own,
            Change.Kind.LIMIT,
            "limit at " + start,
            before,
            after,
            Effects.ofNumber(
                written.rule(),
                value -> value instanceof Value.Literal literal && literal.span().equals(span),
                found.get().quantity().si(),
                fresh.get().quantity().si())));
  }

  private Optional<Value.Literal> find(
      Statement.Change.OfLimit change, RuleWriter.Written written) {
    List<Value.Literal> literals = literals(written);
    Optional<Statement.Number> before = change.before();
    List<Value.Literal> meant =
        literals.stream()
            .filter(l -> before.isEmpty() || isEqual(l.quantity(), before.get().quantity()))
            .toList();
    if (meant.size() == 1) {
      return Optional.of(meant.get(0));
    }
    String id = written.rule().id();
    Span words = change.words().get(0).span().to(change.words().get(1).span());
    Span span = before.map(Statement.Number::span).orElse(words);
    if (meant.isEmpty()) {
      String which = before.map(number -> " " + number.quantity().text()).orElse("");
      diagnostics.add(
          Problems.error(
              DiagnosticCode.NOTHING_TO_AMEND,
              span,
              "The sentence of rule " + id + " has no limit" + which + " in numbers.",
              limits(written)));
    } else {
      diagnostics.add(
          Problems.error(
              DiagnosticCode.UNCLEAR_LIMIT,
              span,
              before.isPresent()
                  ? "The rule "
                      + id
                      + " has the limit "
                      + meant.get(0).quantity().text()
                      + " more than once."
                  : "The rule " + id + " has " + meant.size() + " limits.",
              before.isPresent()
                  ? "Withdraw the rule and write it anew, with a constant for each limit."
                  : "Say which one: the limit "
                      + English.either(meant.stream().map(l -> l.quantity().text()).toList(), 6)
                      + "."));
    }
    return Optional.empty();
  }

  /** Numbers that stand in the sentence as they are; "at least 2 boxes" is none. */
  private static List<Value.Literal> literals(RuleWriter.Written written) {
    return RuleUses.ofSentence(written.rule()).literals().stream()
        .filter(l -> written.source().textOf(l.span()).equals(l.quantity().text()))
        .toList();
  }

  private static boolean isEqual(Quantity one, Quantity other) {
    return one.dimension().equals(other.dimension()) && one.si().compareTo(other.si()) == 0;
  }

  /** What of the rule has a value. */
  private String limits(RuleWriter.Written written) {
    List<String> all = new ArrayList<>();
    RuleUses.ofSentence(written.rule())
        .constants()
        .values()
        .forEach(c -> all.add(c.name() + " is " + c.value().quantity().text()));
    literals(written).forEach(literal -> all.add("the limit " + literal.quantity().text()));
    return all.isEmpty()
        ? "Its sentence is: " + written.rule().sentence()
        : "In its sentence: " + English.either(all, 6).replace(" or ", " and ") + ".";
  }

  private Optional<Value.Literal> fitting(
      String what, ValueType.Number wanted, Statement.Number number) {
    Value.Literal given =
        new Value.Literal(number.quantity(), Typing.typeOf(number.quantity()), number.span());
    Value adapted = Typing.adapt(given, wanted);
    Optional<Diagnostic> problem = Typing.mismatch(what, wanted, adapted);
    problem.ifPresent(diagnostics::add);
    return problem.isPresent() ? Optional.empty() : Optional.of((Value.Literal) adapted);
  }
}
