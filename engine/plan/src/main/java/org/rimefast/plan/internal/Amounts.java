package org.rimefast.plan.internal;

import java.math.BigDecimal;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Amount;
import org.rimefast.plan.internal.json.Node;
import org.rimefast.units.Dimension;
import org.rimefast.units.Quantity;
import org.rimefast.units.QuantityParser;
import org.rimefast.units.QuantityParser.Parsed;
import org.rimefast.units.Rational;
import org.rimefast.units.Unit;
import org.rimefast.units.Units;

/** Reads values with units. */
final class Amounts {
  /** Which lengths make sense. */
  enum Range {
    ANY,
    NOT_NEGATIVE,
    POSITIVE
  }

  private static final Pattern PLUS_MINUS = Pattern.compile("\\s*(?:\\+-|\u00b1)\\s*");

  /** More digits than any plan needs, and few enough that exact arithmetic stays quick. */
  private static final int DIGITS = 30;

  private static final double LONGEST_MILLIMETRES = 1e7;
  private static final Rational PERCENT_100 = Rational.ONE;

  private Amounts() {}

  /**
   * A length: a plain number in the plan's unit, or text with a unit, each with or without a
   * tolerance of its own.
   */
  static @Nullable Amount length(Context context, Node node, Supplier<String> label, Range range) {
    String key = key(node);
    Amount known = key == null ? null : context.remembered(key);
    Amount amount = known == null ? readLength(context, node, label) : known;
    if (amount == null) {
      return null;
    }
    if (known == null && key != null) {
      context.remember(key, amount);
    }
    return isIn(context, node, label, amount, range) ? amount : null;
  }

  /** True if a value is not less than its range allows; else there is a fault. */
  static boolean isIn(
      Context context, Node node, Supplier<String> label, Amount amount, Range range) {
    int sign = amount.value().number().signum();
    if ((sign < 0 && range != Range.ANY) || (sign == 0 && range == Range.POSITIVE)) {
      context.faults.add(
          "negative-size",
          node,
          label.get() + " is " + amount.value().text() + ".",
          range == Range.POSITIVE ? "It must be more than 0." : "It must be 0 or more.");
      return false;
    }
    return true;
  }

  private static @Nullable String key(Node node) {
    if (node instanceof Node.Numeral number) {
      return number.spelling();
    }
    return node instanceof Node.Text text ? '"' + text.value() : null;
  }

  private static @Nullable Amount readLength(Context context, Node node, Supplier<String> label) {
    if (node instanceof Node.Numeral number) {
      Rational value = number(context, node, number.spelling(), label);
      Unit unit = context.unit();
      if (value == null || unit == null) {
        return null;
      }
      Quantity quantity = new Quantity(value, unit, plain(number.spelling()) + " " + unit.symbol());
      return tooLong(context, node, label, quantity) ? null : new Amount(quantity, null);
    }
    Amount amount = withUnit(context, node, label, Dimension.LENGTH, "\"16 in\"");
    return amount == null || tooLong(context, node, label, amount.value()) ? null : amount;
  }

  private static boolean tooLong(
      Context context, Node node, Supplier<String> label, Quantity length) {
    double millimetres = new Amount(length, null).millimetres();
    boolean longer = Math.abs(millimetres) > LONGEST_MILLIMETRES;
    if (longer) {
      context.faults.add(
          "bad-number",
          node,
          label.get() + " is " + length.text() + ", more than 10 kilometres.",
          "Check the number and its unit.");
    }
    return longer;
  }

  /** A value that is not a length, always written with its unit. */
  static @Nullable Amount quantity(
      Context context, Node node, Supplier<String> label, Dimension dimension, String example) {
    if (node instanceof Node.Numeral number) {
      context.faults.add(
          "missing-unit",
          node,
          label.get() + " is the bare number " + clipped(number.spelling()) + ".",
          "Write it in quotes with its unit, such as " + example + ".");
      return null;
    }
    Amount amount = withUnit(context, node, label, dimension, example);
    if (amount == null) {
      return null;
    }
    String limit = outOfRange(dimension, amount.value().si());
    if (limit != null) {
      context.faults.add(
          "bad-number",
          node,
          label.get() + " is " + amount.value().text() + "; " + limit + ".",
          "Check the number and its unit.");
      return null;
    }
    return amount;
  }

  /** A value of any kind, always written with its unit. */
  static @Nullable Amount anyQuantity(
      Context context, Node node, Supplier<String> label, String example) {
    Dimension dimension = Dimension.TEMPERATURE;
    if (node instanceof Node.Text text) {
      Matcher split = PLUS_MINUS.matcher(text.value());
      String before = split.find() ? text.value().substring(0, split.start()) : text.value();
      if (QuantityParser.parse(before) instanceof Parsed.Ok ok
          && !ok.quantity().unit().equals(Units.ONE)) {
        dimension = ok.quantity().dimension();
      }
    } else if (!(node instanceof Node.Numeral)) {
      context.faults.add(
          "wrong-type",
          node,
          label.get() + " must be a value with its unit; here stands " + node.kind() + ".",
          "Write it as " + example + ", or leave the field out if nothing was read.");
      return null;
    }
    return quantity(context, node, label, dimension, example);
  }

  private static @Nullable String outOfRange(Dimension dimension, Rational si) {
    if (dimension.equals(Dimension.TEMPERATURE) && si.signum() < 0) {
      return "nothing is colder than -273.15 degC";
    }
    if (dimension.equals(Dimension.PERCENT) && (si.signum() < 0 || si.compareTo(PERCENT_100) > 0)) {
      return "it must lie between 0 % and 100 %";
    }
    if (dimension.equals(Dimension.CONDUCTIVITY) && si.signum() <= 0) {
      return "it must be more than 0";
    }
    return null;
  }

  private static @Nullable Amount withUnit(
      Context context, Node node, Supplier<String> label, Dimension dimension, String example) {
    if (!(node instanceof Node.Text text)) {
      context.faults.add(
          "wrong-type",
          node,
          label.get() + " must be " + noun(dimension) + "; here stands " + node.kind() + ".",
          "Write it as " + example + ", or leave the field out if it is not known.");
      return null;
    }
    Matcher split = PLUS_MINUS.matcher(text.value());
    if (!split.find()) {
      Quantity value = parse(context, node, text.value(), label, dimension, example);
      return value == null ? null : new Amount(value, null);
    }
    String before = text.value().substring(0, split.start());
    String after = text.value().substring(split.end());
    Quantity value = parse(context, node, before, label, dimension, example);
    Supplier<String> of = () -> "the tolerance in " + label.get();
    if (PLUS_MINUS.matcher(after).find()) {
      context.faults.add(
          "bad-number", node, label.get() + " has two tolerances.", "Keep one of them.");
      return null;
    }
    Quantity plusMinus =
        dimension.isPoint()
            ? parse(
                context, node, after, of, Dimension.TEMPERATURE_DIFFERENCE, "\"22 degC +- 1 K\"")
            : parse(context, node, after, of, dimension, example);
    if (value == null || plusMinus == null) {
      return null;
    }
    if (plusMinus.number().signum() < 0) {
      context.faults.add(
          "negative-size",
          node,
          Fields.capital(of.get()) + " is " + plusMinus.text() + ".",
          "A tolerance counts both ways; write it without a sign.");
      return null;
    }
    return new Amount(value, plusMinus);
  }

  private static @Nullable Quantity parse(
      Context context,
      Node node,
      String text,
      Supplier<String> label,
      Dimension dimension,
      String example) {
    Parsed parsed = QuantityParser.parse(text);
    if (parsed instanceof Parsed.Ok ok && ok.quantity().dimension().equals(dimension)) {
      return ok.quantity();
    }
    String subject = Fields.capital(label.get());
    if (parsed instanceof Parsed.Problem problem) {
      context.faults.add(
          problem.kind() == Parsed.Problem.Kind.UNIT ? "wrong-unit" : "bad-number",
          node,
          subject + " cannot be read: " + problem.message(),
          problem.help());
      return null;
    }
    Quantity quantity = ((Parsed.Ok) parsed).quantity();
    if (quantity.unit().equals(Units.ONE)) {
      context.faults.add(
          "missing-unit",
          node,
          subject + " is " + quantity.text() + " without a unit.",
          "Write the unit after the number, as in "
              + example
              + "."
              + (dimension.equals(Dimension.LENGTH)
                  ? " Only a number without quotes is in the plan's unit."
                  : ""));
    } else {
      context.faults.add(
          "wrong-unit",
          node,
          subject + " is " + quantity.text() + ", which is not " + noun(dimension) + ".",
          "Write it as in " + example + ".");
    }
    return null;
  }

  private static String noun(Dimension dimension) {
    if (dimension.equals(Dimension.LENGTH)) {
      return "a length";
    }
    if (dimension.equals(Dimension.TEMPERATURE)) {
      return "a temperature in degC or degF";
    }
    if (dimension.equals(Dimension.TEMPERATURE_DIFFERENCE)) {
      return "a difference of temperatures, in K";
    }
    if (dimension.equals(Dimension.PERCENT)) {
      return "a share in %";
    }
    if (dimension.equals(Dimension.VOLUME)) {
      return "a volume";
    }
    if (dimension.equals(Dimension.CURRENT)) {
      return "a current in A";
    }
    return dimension.equals(Dimension.VOLTAGE) ? "a voltage in V" : "a conductivity";
  }

  /** A JSON number as an exact value; null, with a fault if no plan can mean it. */
  static @Nullable Rational number(
      Context context, Node node, String spelling, Supplier<String> label) {
    BigDecimal decimal = decimal(spelling);
    if (decimal == null) {
      context.faults.add(
          "bad-number",
          node,
          label.get() + " is " + clipped(spelling) + ", which no plan can mean.",
          "Write at most " + DIGITS + " digits, without a large exponent.");
      return null;
    }
    return Rational.of(decimal);
  }

  /** The decimal; null if it is not finite or has too many digits, written out. */
  private static @Nullable BigDecimal decimal(String spelling) {
    if (spelling.length() > 2 * DIGITS) {
      return null;
    }
    try {
      BigDecimal decimal = new BigDecimal(spelling);
      // Sums in long: a scale near the ends of int must not wrap round.
      long before = (long) decimal.precision() - decimal.scale();
      return decimal.scale() > DIGITS || before > DIGITS || decimal.precision() > DIGITS
          ? null
          : decimal;
    } catch (NumberFormatException e) {
      return null;
    }
  }

  private static String plain(String spelling) {
    BigDecimal decimal = new BigDecimal(spelling);
    return decimal.toPlainString();
  }

  static String clipped(String spelling) {
    return spelling.length() > 40 ? spelling.substring(0, 40) + "..." : spelling;
  }
}
