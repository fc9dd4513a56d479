package org.rimefast.lang.internal.resolve;

import java.util.ArrayList;
import java.util.List;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Variable;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Noun;

/**
 * What has been spoken of so far.
 *
 * @param spoken the enclosing variables, outermost first, and where each was named
 * @param it what {@code it} stands for
 * @param bare whose a property without an owner is
 */
public record Scope(List<Spoken> spoken, Reference it, Reference bare) {
  /** A variable, what it was called, and where. */
  public record Spoken(Variable variable, String called, Span span) {}

  /** Copies the list. */
  public Scope {
    spoken = List.copyOf(spoken);
  }

  /** The scope of a rule about elements of a kind, which are called so. */
  public static Scope of(Noun noun, String called, Span span) {
    Variable subject = new Variable(0, noun);
    Reference it = new Reference.Bound(subject);
    return new Scope(List.of(new Spoken(subject, called, span)), it, it);
  }

  /** A new variable for {@code noun} at this place. */
  public Variable next(Noun noun) {
    return new Variable(spoken.size(), noun);
  }

  /** With one variable more; {@code it} stays. */
  public Scope with(Variable variable, String called, Span span) {
    List<Spoken> more = new ArrayList<>(spoken);
    more.add(new Spoken(variable, called, span));
    return new Scope(more, it, bare);
  }

  /** Inside {@code (where ...)} of a variable. */
  public Scope inside(Variable variable, String called, Span span) {
    Reference inner = new Reference.Bound(variable);
    return new Scope(with(variable, called, span).spoken(), inner, inner);
  }

  /** With another owner for bare properties. */
  public Scope withBare(Reference owner) {
    return new Scope(spoken, it, owner);
  }

  /**
   * The variables that {@code the NOUN} can mean; those of exactly that kind if there are any. A
   * term means only what was called so.
   */
  List<Spoken> named(Kind kind) {
    if (kind.isTerm()) {
      return spoken.stream().filter(s -> s.called().equals(kind.singular())).toList();
    }
    Noun noun = kind.noun();
    List<Spoken> exact =
        spoken.stream().filter(s -> s.variable().noun().id().equals(noun.id())).toList();
    return exact.isEmpty()
        ? spoken.stream().filter(s -> s.variable().noun().isA(noun)).toList()
        : exact;
  }

  /** The kind of element that the rule is about. */
  public Noun subject() {
    return spoken.get(0).variable().noun();
  }
}
