package org.rimefast.lang.internal.check;

import java.util.List;
import java.util.Optional;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.resolve.Problems;
import org.rimefast.lang.internal.resolve.Typing;
import org.rimefast.lang.internal.syntax.Word;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.rule.Waiver;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.units.Quantity;
import org.rimefast.units.QuantityParser;

/** Checks how far off a rule's limit a waiver reaches. */
final class WaiverBound {
  private final Fields fields;
  private final List<Diagnostic> diagnostics;

  WaiverBound(Fields fields, List<Diagnostic> diagnostics) {
    this.fields = fields;
    this.diagnostics = diagnostics;
  }

  /** The bound; empty, and told, if the rule has no such limit, or more than one. */
  Optional<Waiver.Bound> of(Rule rule) {
    Optional<Word> down = fields.word("down to");
    Optional<Word> up = fields.word("up to");
    if (down.isPresent() && up.isPresent()) {
      return refused(
          DiagnosticCode.REPEATED_PART,
          up.get(),
          "A waiver reaches down or up, not both ways.",
          "Keep one of them.");
    }
    Word written = down.or(() -> up).orElseThrow();
    Comparison wanted = down.isPresent() ? Comparison.AT_LEAST : Comparison.AT_MOST;
    Quantity quantity = quantity(written.text());
    Value.Literal literal = new Value.Literal(quantity, Typing.typeOf(quantity), written.span());
    List<LimitFinder.Found> all = LimitFinder.in(rule.requirement());
    List<LimitFinder.Found> fit =
        all.stream()
            .filter(
                one ->
                    Typing.comparable(
                        one.value().type(), Typing.adapt(literal, one.value().type()).type()))
            .toList();
    if (fit.isEmpty()) {
      return refused(
          DiagnosticCode.WRONG_BOUND,
          written,
          "The rule "
              + rule.id()
              + " has no limit that "
              + written.text()
              + " could be compared with.",
          all.isEmpty()
              ? "It sets no limit in numbers: leave this part out."
              : "Write a number of the same kind as the rule's limit, or leave this part out.");
    }
    List<LimitFinder.Found> same = fit.stream().filter(one -> one.asked() == wanted).toList();
    if (same.isEmpty()) {
      boolean floor = wanted == Comparison.AT_LEAST;
      return refused(
          DiagnosticCode.WRONG_BOUND,
          written,
          "The rule "
              + rule.id()
              + (floor ? " asks for at most, so" : " asks for at least, so")
              + " a waiver reaches "
              + (floor ? "up." : "down."),
          "Write: " + (floor ? "up to " : "down to ") + written.text());
    }
    if (same.size() > 1) {
      return refused(
          DiagnosticCode.WRONG_BOUND,
          written,
          "The rule "
              + rule.id()
              + " has several limits that "
              + written.text()
              + " could be compared with.",
          "Leave this part out, or split the rule into one for each limit.");
    }
    return bound(same.get(0), wanted, literal, written);
  }

  private Optional<Waiver.Bound> bound(
      LimitFinder.Found found, Comparison wanted, Value.Literal literal, Word written) {
    Optional<Quantity> limit = fixed(found.value());
    if (limit.isPresent()) {
      int order = literal.quantity().si().compareTo(limit.get().si());
      if (wanted == Comparison.AT_LEAST ? order >= 0 : order <= 0) {
        return refused(
            DiagnosticCode.WRONG_BOUND,
            written,
            "This allows nothing, because the rule's own limit is " + limit.get().text() + ".",
            wanted == Comparison.AT_LEAST
                ? "Write how far the value may fall below it."
                : "Write how far the value may rise above it.");
      }
    }
    Value adapted = Typing.adapt(literal, found.value().type());
    return Optional.of(
        new Waiver.Bound(wanted, literal, found.with().apply((Value.Literal) adapted)));
  }

  private static Optional<Quantity> fixed(Value value) {
    if (value instanceof Value.Named named) {
      return Optional.of(named.constant().value().quantity());
    }
    return value instanceof Value.Literal literal
        ? Optional.of(literal.quantity())
        : Optional.empty();
  }

  /** A quantity that the grammar has found to be one. */
  private static Quantity quantity(String written) {
    if (QuantityParser.parse(written) instanceof QuantityParser.Parsed.Ok ok) {
      return ok.quantity();
    }
    throw new IllegalStateException("not a quantity: " + English.quoted(written));
  }

  private Optional<Waiver.Bound> refused(
      DiagnosticCode code, Word written, String headline, String help) {
    diagnostics.add(Problems.error(code, written.span(), headline, help));
    return Optional.empty();
  }
}
