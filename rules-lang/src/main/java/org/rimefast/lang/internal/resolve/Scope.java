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
  /** A variable and where it was named. */
  public record Spoken(Variable variable, Span span) {}

  /** Copies the list. */
  public Scope {
    spoken = List.copyOf(spoken);
  }

  /** The scope of a rule about {@code noun}. */
  public static Scope of(Noun noun, Span span) {
    Variable subject = new Variable(0, noun);
    Reference it = new Reference.Bound(subject);
    return new Scope(List.of(new Spoken(subject, span)), it, it);
  }

  /** A new variable for {@code noun} at this place. */
  public Variable next(Noun noun) {
    return new Variable(spoken.size(), noun);
  }

  /** With one variable more; {@code it} stays. */
  public Scope with(Variable variable, Span span) {
    List<Spoken> more = new ArrayList<>(spoken);
    more.add(new Spoken(variable, span));
    return new Scope(more, it, bare);
  }

  /** Inside {@code (where ...)} of a variable. */
  public Scope inside(Variable variable, Span span) {
    Reference inner = new Reference.Bound(variable);
    return new Scope(with(variable, span).spoken(), inner, inner);
  }

  /** With another owner for bare properties. */
  public Scope withBare(Reference owner) {
    return new Scope(spoken, it, owner);
  }

  /** The variables that {@code the NOUN} can mean; those of exactly that kind if there are any. */
  public List<Spoken> named(Noun noun) {
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
