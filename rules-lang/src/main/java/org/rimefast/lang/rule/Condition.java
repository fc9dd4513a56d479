package org.rimefast.lang.rule;

import java.util.List;
import java.util.Optional;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.Relation;
import org.rimefast.lang.vocabulary.ValueType;

/** An expression that is true, false or unknown. */
public sealed interface Condition {
  /** The text it was read from. */
  Span span();

  /** Does {@code visitor}'s part for this kind of node. */
  <R> R accept(Visitor<R> visitor);

  /** All of two or more. */
  record And(List<Condition> parts, Span span) implements Condition {
    /** Refuses fewer than two. */
    public And {
      Types.require(parts.size() >= 2, "two parts or more");
      parts = List.copyOf(parts);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitAnd(this);
    }
  }

  /** At least one of two or more. */
  record Or(List<Condition> parts, Span span) implements Condition {
    /** Refuses fewer than two. */
    public Or {
      Types.require(parts.size() >= 2, "two parts or more");
      parts = List.copyOf(parts);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitOr(this);
    }
  }

  /** Not so. */
  record Not(Condition part, Span span) implements Condition {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitNot(this);
    }
  }

  /** Two values compared. Words and texts can only be equal or not equal. */
  record Compare(Value left, Comparison comparison, Value right, Span span) implements Condition {
    /** Refuses values that cannot be compared so. */
    public Compare {
      Types.require(Types.comparable(left.type(), right.type()), "comparable values");
      Types.require(
          left.type() instanceof ValueType.Number
              || comparison == Comparison.EQUAL
              || comparison == Comparison.NOT_EQUAL,
          "words have no order");
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitCompare(this);
    }
  }

  /** A relation that holds of an element. */
  record Holds(Relation relation, Reference subject, List<Argument> arguments, Span span)
      implements Condition {
    /** Refuses a subject or arguments that do not fit. */
    public Holds {
      Types.require(
          subject.noun().isA(relation.subject()), "a " + subject.noun() + " cannot " + relation);
      Types.requireArguments(relation.slots(), arguments);
      arguments = List.copyOf(arguments);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitHolds(this);
    }
  }

  /**
   * An element that is of a kind: {@code its face is a wall}, {@code it is a wet room}.
   *
   * @param subject the element
   * @param noun the kind
   * @param term what else must hold of it, where the standard defines the kind
   * @param span the text it was read from
   */
  record IsA(Reference subject, Noun noun, Optional<Term> term, Span span) implements Condition {
    /** Refuses a term of another noun. */
    public IsA {
      term.ifPresent(t -> Types.require(t.noun().equals(noun), t.singular() + " is no " + noun));
    }

    /** How one of the kind is called. */
    public String singular() {
      return term.map(Term::singular).orElse(noun.singular());
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitIsA(this);
    }
  }

  /**
   * Two references that lead to one and the same element: {@code its face is the face}. Unknown if
   * either cannot be found.
   */
  record Same(Reference left, Reference right, Span span) implements Condition {
    /** Refuses one reference twice. */
    public Same {
      Types.require(!left.equals(right), "two references");
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitSame(this);
    }
  }

  /**
   * How many elements of a kind meet a condition.
   *
   * @param quantifier how many must
   * @param number the number in {@code at least 2} or {@code all but 2}; 0 where the quantifier has
   *     none
   * @param variable stands for each element in turn
   * @param others true if the rule's own subject does not count: {@code another box}
   * @param where which elements are looked at; all if empty
   * @param body what is asked of each
   * @param span the text it was read from
   */
  record Quantified(
      Quantifier quantifier,
      int number,
      Variable variable,
      boolean others,
      Optional<Condition> where,
      Condition body,
      Span span)
      implements Condition {

    /** How many elements must meet the condition. */
    public enum Quantifier {
      EACH,
      SOME,
      NO,
      AT_LEAST,
      AT_MOST,
      EXACTLY,
      /** At most so many do not. */
      ALL_BUT
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitQuantified(this);
    }
  }

  /**
   * A question that was answered on site as it should be, and a value read there that keeps to its
   * limit. Unknown as long as nobody answered.
   *
   * @param subject the element that is looked at
   * @param question what is asked
   * @param span the text it was read from
   */
  record Answered(Reference subject, Question question, Span span) implements Condition {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitAnswered(this);
    }
  }

  /**
   * One method for each kind of condition, so that a new kind breaks every full pass at compile
   * time.
   */
  interface Visitor<R> {
    R visitAnd(And and);

    R visitOr(Or or);

    R visitNot(Not not);

    R visitCompare(Compare compare);

    R visitHolds(Holds holds);

    R visitIsA(IsA isA);

    R visitSame(Same same);

    R visitQuantified(Quantified quantified);

    R visitAnswered(Answered answered);
  }
}
