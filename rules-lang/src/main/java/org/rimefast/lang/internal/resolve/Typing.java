package org.rimefast.lang.internal.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.message.Nearest;
import org.rimefast.lang.internal.message.Readings;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.rule.Value.Arithmetic;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.units.Dimension;
import org.rimefast.units.Quantity;
import org.rimefast.units.Unit;
import org.rimefast.units.Units;

/** Whether values go together, and what to say if they do not. */
public final class Typing {
  private Typing() {}

  /** True if values of the two types can be equal. */
  public static boolean comparable(ValueType left, ValueType right) {
    if (left instanceof ValueType.Number a && right instanceof ValueType.Number b) {
      return a.dimension().equals(b.dimension());
    }
    return left.equals(right);
  }

  /** The type of a value that is one of two comparable ones: a count only if both are counts. */
  public static ValueType either(ValueType one, ValueType other) {
    return one instanceof ValueType.Number a && other instanceof ValueType.Number b
        ? new ValueType.Number(a.dimension(), a.example(), a.whole() && b.whole())
        : one;
  }

  /** A literal in kelvin as a temperature, where a temperature is called for. */
  public static Value adapt(Value value, ValueType wanted) {
    if (value instanceof Value.Literal literal
        && literal.quantity().unit().equals(Units.KELVIN)
        && wanted instanceof ValueType.Number number
        && number.dimension().equals(Dimension.TEMPERATURE)) {
      return new Value.Literal(literal.quantity(), number, literal.span());
    }
    return value;
  }

  /** What is wrong with {@code value} where {@code wanted} is called for by {@code what}. */
  public static Optional<Diagnostic> mismatch(String what, ValueType wanted, Value value) {
    if (comparable(wanted, value.type())) {
      return Optional.empty();
    }
    if (wanted instanceof ValueType.Choice choice) {
      return Optional.of(notInChoice(what, choice, value));
    }
    if (wanted instanceof ValueType.Number number
        && value instanceof Value.Literal literal
        && literal.quantity().dimension().equals(Dimension.NUMBER)) {
      return Optional.of(missingUnit(what, number, literal));
    }
    return Optional.of(
        Problems.error(
            DiagnosticCode.WRONG_TYPE,
            value.span(),
            English.sentence(what)
                + " is "
                + TypeNames.of(wanted)
                + ", and "
                + Readings.of(value)
                + " is "
                + TypeNames.of(value.type())
                + ".",
            wrongTypeHelp(wanted, value.type())));
  }

  private static String wrongTypeHelp(ValueType wanted, ValueType given) {
    if (wanted instanceof ValueType.Number number) {
      boolean temperatures =
          number.dimension().equals(Dimension.TEMPERATURE)
              && given instanceof ValueType.Number other
              && other.dimension().equals(Dimension.TEMPERATURE_DIFFERENCE);
      if (temperatures) {
        return "Write a temperature in degC or degF, such as 5 degC.";
      }
      boolean difference =
          number.dimension().equals(Dimension.TEMPERATURE_DIFFERENCE)
              && given instanceof ValueType.Number other
              && other.dimension().equals(Dimension.TEMPERATURE);
      if (difference) {
        return "Write a difference in K, such as 1 K.";
      }
      return "Put " + TypeNames.of(wanted) + " here, such as " + example(number) + ".";
    }
    return "Put " + TypeNames.of(wanted) + " here, in quotes.";
  }

  private static String example(ValueType.Number number) {
    String symbol = number.example().symbol();
    return symbol.isEmpty() ? "12" : "50 " + symbol;
  }

  private static Diagnostic missingUnit(
      String what, ValueType.Number wanted, Value.Literal literal) {
    String number = literal.quantity().text();
    List<String> with = new ArrayList<>();
    for (Unit unit : usual(wanted)) {
      with.add(number + " " + unit);
    }
    return Problems.error(
        DiagnosticCode.MISSING_UNIT,
        literal.span(),
        "The number " + number + " needs a unit: " + what + " is " + TypeNames.of(wanted) + ".",
        "Write " + English.either(with, 2) + ".");
  }

  /** The example's unit, and one of the other system. */
  private static List<Unit> usual(ValueType.Number wanted) {
    Unit other =
        wanted.dimension().equals(Dimension.LENGTH)
            ? wanted.example().equals(Units.INCH) || wanted.example().equals(Units.FOOT)
                ? Units.MILLIMETRE
                : Units.INCH
            : wanted.dimension().equals(Dimension.TEMPERATURE)
                ? wanted.example().equals(Units.DEGREE_FAHRENHEIT)
                    ? Units.DEGREE_CELSIUS
                    : Units.DEGREE_FAHRENHEIT
                : wanted.example();
    return other.equals(wanted.example()) ? List.of(other) : List.of(wanted.example(), other);
  }

  private static Diagnostic notInChoice(String what, ValueType.Choice choice, Value value) {
    String words = English.either(choice.words(), 8);
    if (value instanceof Value.Text text) {
      List<String> near = Nearest.to(text.text(), choice.words());
      String word = near.isEmpty() ? choice.words().get(0) : near.get(0);
      return Problems.fixable(
          DiagnosticCode.WRONG_CHOICE,
          value.span(),
          English.sentence(what) + " is a word without quotes: " + words + ".",
          "Write " + word + " without quotes.",
          value.span(),
          word);
    }
    return Problems.error(
        DiagnosticCode.WRONG_CHOICE,
        value.span(),
        English.sentence(what) + " cannot be " + Readings.of(value) + ".",
        "Write one of its words: " + words + ".");
  }

  /** A comparison of two values. */
  public static Result<Condition> compare(
      Value left, Comparison comparison, Value right, Span span) {
    Value a = adapt(left, right.type());
    Value b = adapt(right, left.type());
    Optional<Diagnostic> mismatch =
        a instanceof Value.Literal && !(b instanceof Value.Literal)
            ? mismatch(Readings.of(b), b.type(), a)
            : mismatch(Readings.of(a), a.type(), b);
    if (mismatch.isPresent()) {
      return Result.bad(mismatch.get());
    }
    boolean equality = comparison == Comparison.EQUAL || comparison == Comparison.NOT_EQUAL;
    if (!equality && !(a.type() instanceof ValueType.Number)) {
      return Result.bad(
          Problems.error(
              DiagnosticCode.NO_ORDER,
              span,
              "Words have no order, so " + comparison.sign() + " says nothing about them.",
              "Write \"is\" or \"is not\", such as: mount is flush"));
    }
    return Result.ok(new Condition.Compare(a, comparison, b, span));
  }

  /** A sum, difference, product or quotient. */
  public static Result<Value> arithmetic(
      Arithmetic.Operator operator, Value left, Value right, Span span) {
    for (Value side : List.of(left, right)) {
      if (!(side.type() instanceof ValueType.Number)) {
        return Result.bad(
            Problems.error(
                DiagnosticCode.BAD_ARITHMETIC,
                side.span(),
                English.sentence(Readings.of(side))
                    + " is "
                    + TypeNames.of(side.type())
                    + ", and only numbers can be reckoned with.",
                "Put a number here."));
      }
    }
    ValueType.Number a = (ValueType.Number) left.type();
    ValueType.Number b = (ValueType.Number) right.type();
    Optional<Dimension> dimension = Arithmetic.resultOf(operator, a.dimension(), b.dimension());
    if (dimension.isEmpty()) {
      return Result.bad(badArithmetic(operator, left, right, span));
    }
    Unit example =
        dimension.get().equals(a.dimension())
            ? a.example()
            : dimension.get().equals(b.dimension()) ? b.example() : Units.coherent(dimension.get());
    return Result.ok(
        new Arithmetic(
            operator, left, right, new ValueType.Number(dimension.get(), example), span));
  }

  /** {@code 80 % of} a value: of the same kind as the value, also where that is a share itself. */
  public static Result<Value> shareOf(Value share, Value whole, Span span) {
    return whole.type() instanceof ValueType.Number number
            && number.dimension().equals(Dimension.PERCENT)
        ? Result.ok(new Arithmetic(Arithmetic.Operator.TIMES, share, whole, number, span))
        : arithmetic(Arithmetic.Operator.TIMES, share, whole, span);
  }

  private static Diagnostic badArithmetic(
      Arithmetic.Operator operator, Value left, Value right, Span span) {
    Dimension a = ((ValueType.Number) left.type()).dimension();
    Dimension b = ((ValueType.Number) right.type()).dimension();
    boolean sum = operator == Arithmetic.Operator.PLUS || operator == Arithmetic.Operator.MINUS;
    if (!sum) {
      return Problems.error(
          DiagnosticCode.BAD_ARITHMETIC,
          span,
          "A temperature cannot be multiplied or divided.",
          "Reckon with a difference of temperatures, in K.");
    }
    if (a.isPoint() && b.isPoint()) {
      return Problems.error(
          DiagnosticCode.BAD_ARITHMETIC,
          span,
          "Two temperatures have no sum.",
          "Add a difference in K: temperature of its room + 5 K");
    }
    String verb = operator == Arithmetic.Operator.PLUS ? "added to" : "taken from";
    Value first = operator == Arithmetic.Operator.PLUS ? left : right;
    Value second = operator == Arithmetic.Operator.PLUS ? right : left;
    return Problems.error(
        DiagnosticCode.BAD_ARITHMETIC,
        span,
        English.sentence(TypeNames.of(first.type()))
            + " cannot be "
            + verb
            + " "
            + TypeNames.of(second.type())
            + ".",
        "Use two of the same kind, such as 2 in + 10 mm.");
  }

  /** The type of a quantity as written. */
  public static ValueType.Number typeOf(Quantity quantity) {
    return new ValueType.Number(quantity.dimension(), quantity.unit());
  }
}
