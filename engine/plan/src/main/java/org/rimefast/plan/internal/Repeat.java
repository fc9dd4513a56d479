package org.rimefast.plan.internal;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Amount;
import org.rimefast.plan.internal.json.Node;
import org.rimefast.units.Rational;

/**
 * A row of equal items.
 *
 * @param count how many
 * @param spacing from one to the next, in metres
 * @param up true if the row goes up the face, false if along it
 */
record Repeat(int count, Rational spacing, boolean up) {
  static final List<String> FIELDS = List.of("count", "spacing", "direction");
  static final Map<String, Boolean> DIRECTIONS =
      new java.util.LinkedHashMap<>(Map.of("along", false));

  static {
    DIRECTIONS.put("up", true);
  }

  /** The row that an item stands for; null, with a fault, if what the item says is no row. */
  static @Nullable Repeat read(Context context, Fields item, Node node) {
    Fields fields = Fields.of(context, node, "repeat", FIELDS);
    if (fields == null) {
      return null;
    }
    Integer count = count(context, item, fields);
    Amount spacing = fields.requiredLength("spacing", Amounts.Range.POSITIVE);
    Boolean up = fields.has("direction") ? fields.word("direction", DIRECTIONS) : Boolean.FALSE;
    if (spacing != null && spacing.plusMinus() != null && node instanceof Node.Structure repeat) {
      Node at = repeat.member("spacing");
      context.faults.add(
          "bad-repeat",
          at == null ? node : at,
          "The spacing of a repeat has a tolerance.",
          "Give the tolerance with the place of " + item.owner() + " instead.");
      return null;
    }
    return count == null || spacing == null || up == null
        ? null
        : new Repeat(count, spacing.value().si(), up);
  }

  private static @Nullable Integer count(Context context, Fields item, Fields fields) {
    Node node = fields.required("count", "Add \"count\": how many there are.");
    if (node == null) {
      return null;
    }
    String subject = "\"count\" in the repeat of " + item.owner();
    if (!(node instanceof Node.Numeral number)) {
      context.faults.add(
          "wrong-type",
          node,
          subject + " must be a whole number; here stands " + node.kind() + ".",
          "Write how many there are, such as 10.");
      return null;
    }
    Rational value = Amounts.number(context, node, number.spelling(), () -> subject);
    if (value == null) {
      return null;
    }
    if (!value.isWhole() || value.signum() <= 0) {
      context.faults.add(
          "bad-repeat",
          node,
          subject + " is " + Amounts.clipped(number.spelling()) + ".",
          "Write a whole number of 1 or more.");
      return null;
    }
    if (value.compareTo(Rational.of(context.limits.elements())) > 0) {
      context.faults.add(
          "too-large",
          node,
          subject
              + " is "
              + Amounts.clipped(number.spelling())
              + "; a plan may hold "
              + context.limits.elements()
              + " elements.",
          "Write a smaller number.");
      return null;
    }
    return value.numerator().intValueExact();
  }

  /** The id of an item of a row, counted from 1. */
  static String id(String row, int number) {
    return row + "-" + number;
  }
}
