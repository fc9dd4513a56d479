package org.rimefast.lang.rule;

import java.util.List;
import java.util.Optional;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.units.Dimension;
import org.rimefast.units.Quantity;

/** An expression that has a value. */
public sealed interface Value extends Argument {
  /** The type of the value. */
  ValueType type();

  /** The text it was read from. */
  Span span();

  /** Does {@code visitor}'s part for this kind of node. */
  <R> R accept(Visitor<R> visitor);

  /** A number with its unit, as written. */
  record Literal(Quantity quantity, ValueType.Number type, Span span) implements Value {
    /** Refuses a unit of another dimension than the type's. */
    public Literal {
      Types.require(
          quantity.dimension().equals(type.dimension())
              || (isKelvin(quantity) && type.dimension().equals(Dimension.TEMPERATURE)),
          "dimension of " + quantity);
    }

    /** A literal in kelvin is a difference unless a temperature is called for. */
    private static boolean isKelvin(Quantity quantity) {
      return quantity.dimension().equals(Dimension.TEMPERATURE_DIFFERENCE)
          && quantity.unit().symbol().equals("K");
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitLiteral(this);
    }
  }

  /** A word of a closed list: {@code outer bay}. */
  record Word(String word, ValueType.Choice type, Span span) implements Value {
    /** Refuses a word that is not in the list. */
    public Word {
      Types.require(type.words().contains(word), word + " is no " + type.name());
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitWord(this);
    }
  }

  /** Quoted text. */
  record Text(String text, ValueType.Text type, Span span) implements Value {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitText(this);
    }
  }

  /** A named constant, where it is used. */
  record Named(Constant constant, Span span) implements Value {
    @Override
    public ValueType type() {
      return constant.value().type();
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitNamed(this);
    }
  }

  /** A property of an element. */
  record Of(Property property, Reference owner, List<Argument> arguments, Span span)
      implements Value {
    /** Refuses an owner or arguments that do not fit. */
    public Of {
      Types.require(
          owner.noun().isA(property.owner()), "a " + owner.noun() + " has no " + property);
      Types.requireArguments(property.slots(), arguments);
      arguments = List.copyOf(arguments);
    }

    @Override
    public ValueType type() {
      return property.type();
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitOf(this);
    }
  }

  /** Two numbers made into one. */
  record Arithmetic(Operator operator, Value left, Value right, ValueType.Number type, Span span)
      implements Value {

    /** What is done with the two numbers. */
    public enum Operator {
      PLUS,
      MINUS,
      TIMES,
      DIVIDED_BY
    }

    /** Refuses operands whose dimensions do not go together. */
    public Arithmetic {
      Optional<Dimension> result =
          resultOf(operator, Types.dimension(left), Types.dimension(right));
      Types.require(
          result.isPresent()
              && (result.get().equals(type.dimension())
                  || isShareOfShare(operator, left, right, type)),
          operator + " of these dimensions");
    }

    /** {@code 80 % of its fill}, which is a share again. */
    private static boolean isShareOfShare(
        Operator operator, Value left, Value right, ValueType.Number type) {
      return operator == Operator.TIMES
          && Types.dimension(left).equals(Dimension.PERCENT)
          && Types.dimension(right).equals(Dimension.PERCENT)
          && type.dimension().equals(Dimension.PERCENT);
    }

    /** The dimension of the result, or nothing if the two do not go together. */
    public static Optional<Dimension> resultOf(Operator operator, Dimension a, Dimension b) {
      return switch (operator) {
        case PLUS -> sum(a, b);
        case MINUS ->
            a.isPoint() && a.equals(b)
                ? Optional.of(Dimension.TEMPERATURE_DIFFERENCE)
                : b.isPoint() ? Optional.empty() : sum(a, b);
        case TIMES -> a.isPoint() || b.isPoint() ? Optional.empty() : Optional.of(a.times(b));
        case DIVIDED_BY ->
            a.isPoint() || b.isPoint() ? Optional.empty() : Optional.of(a.dividedBy(b));
      };
    }

    private static Optional<Dimension> sum(Dimension a, Dimension b) {
      if (a.equals(b)) {
        return a.isPoint() ? Optional.empty() : Optional.of(a);
      }
      if (a.isPoint() && b.equals(Dimension.TEMPERATURE_DIFFERENCE)) {
        return Optional.of(a);
      }
      return b.isPoint() && a.equals(Dimension.TEMPERATURE_DIFFERENCE)
          ? Optional.of(b)
          : Optional.empty();
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitArithmetic(this);
    }
  }

  /**
   * One of two values: {@code (if mount is flush then 2 in otherwise 1 in)}. Where the condition is
   * unknown, the value is only known to be one of the two.
   */
  record Conditional(Condition condition, Value then, Value otherwise, ValueType type, Span span)
      implements Value {
    /** Refuses values of two kinds, and a type that is neither's. */
    public Conditional {
      Types.require(
          Types.comparable(then.type(), type) && Types.comparable(otherwise.type(), type),
          "two values of one kind");
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitConditional(this);
    }
  }

  /** What a table of the standard says of an element. */
  record Lookup(Table table, Reference owner, Span span) implements Value {
    /** Refuses an owner that the table is not of. */
    public Lookup {
      Types.require(owner.noun().isA(table.noun()), "a " + owner.noun() + " has no such table");
    }

    @Override
    public ValueType type() {
      return table.type();
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitLookup(this);
    }
  }

  /**
   * Many numbers made into one: {@code number of boxes}, {@code smallest clearance of boxes}.
   *
   * @param function what is made of them
   * @param variable stands for each element in turn
   * @param where which elements count; all if empty
   * @param of the number that each element gives; empty for a count, and only then
   * @param type the type of the result
   * @param span the text it was read from
   */
  record Aggregate(
      Function function,
      Variable variable,
      Optional<Condition> where,
      Optional<Value> of,
      ValueType.Number type,
      Span span)
      implements Value {

    /** What is made of the numbers. Over no elements only COUNT and TOTAL have a value. */
    public enum Function {
      COUNT,
      TOTAL,
      SMALLEST,
      /** The smallest distance to the elements; which of them it is belongs to the answer. */
      NEAREST,
      LARGEST,
      AVERAGE
    }

    /** Refuses a count of values, another function without one, and a total of points. */
    public Aggregate {
      Types.require((function == Function.COUNT) == of.isEmpty(), "a value for all but a count");
      of.ifPresent(
          value ->
              Types.require(
                  Types.dimension(value).equals(type.dimension())
                      && !(function == Function.TOTAL && type.dimension().isPoint()),
                  "dimension of an aggregate"));
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.visitAggregate(this);
    }
  }

  /**
   * One method for each kind of value, so that a new kind breaks every full pass at compile time.
   */
  interface Visitor<R> {
    R visitLiteral(Literal literal);

    R visitWord(Word word);

    R visitText(Text text);

    R visitNamed(Named named);

    R visitOf(Of of);

    R visitArithmetic(Arithmetic arithmetic);

    R visitAggregate(Aggregate aggregate);

    R visitConditional(Conditional conditional);

    R visitLookup(Lookup lookup);
  }
}
