package org.rimefast.lang.internal.paraphrase;

import java.util.Optional;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.rule.Value.Arithmetic.Operator;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.units.Dimension;

/** Writes values within a clause. */
final class ValueWriter implements Value.Visitor<String> {
  private final ClauseWriter clause;
  private boolean bareFirst;
  private boolean listKnown;

  ValueWriter(ClauseWriter clause) {
    this.clause = clause;
  }

  /** What stands first in a comparison. */
  String first(Value value, boolean bare) {
    listKnown = false;
    bareFirst = bare;
    return value.accept(this);
  }

  /** What something is compared with. */
  String limit(Value value, boolean bare) {
    listKnown = true;
    bareFirst = bare;
    return value.accept(this);
  }

  /** A value at a slot, in parentheses unless it is a single word or number. */
  String inSlot(Value value, ValueType type) {
    boolean outerBare = bareFirst;
    boolean outerList = listKnown;
    listKnown = type instanceof ValueType.Choice;
    bareFirst = false;
    String words = value.accept(this);
    bareFirst = outerBare;
    listKnown = outerList;
    boolean plain =
        value instanceof Value.Word
            || value instanceof Value.Named
            || value instanceof Value.Text
            || value instanceof Value.Conditional
            || (value instanceof Value.Literal literal
                && !literal.quantity().unit().symbol().isEmpty()
                && literal.quantity().number().signum() >= 0);
    return plain ? words : "(" + words + ")";
  }

  @Override
  public String visitLiteral(Value.Literal literal) {
    return literal.quantity().text();
  }

  @Override
  public String visitWord(Value.Word word) {
    if (!listKnown) {
      clause.hinder(
          Obstacle.Kind.WORD_WITHOUT_LIST,
          "The word " + word.word() + " stands where nothing before it says what it is a word of.");
    }
    return word.word();
  }

  @Override
  public String visitText(Value.Text text) {
    if (text.text().chars().anyMatch(c -> c == '"' || c == '\n' || c == '\r')) {
      clause.hinder(
          Obstacle.Kind.UNQUOTABLE_TEXT,
          "A text with a quote or a line end has no quotes around it.");
    }
    return "\"" + text.text() + "\"";
  }

  @Override
  public String visitNamed(Value.Named named) {
    return named.constant().name();
  }

  @Override
  public String visitOf(Value.Of of) {
    return owned(of.owner(), clause.property(of));
  }

  /** A property's words with whose it is. */
  private String owned(Reference owner, String filled) {
    boolean bare = owner.equals(clause.scope().bare());
    boolean its = owner.equals(clause.scope().it());
    String before = its && !(bare && bareFirst) ? "its " : "";
    return bare || its ? before + filled : filled + " of " + clause.element(owner);
  }

  @Override
  public String visitLookup(Value.Lookup lookup) {
    return owned(lookup.owner(), lookup.table().name());
  }

  @Override
  public String visitArithmetic(Value.Arithmetic arithmetic) {
    int named = clause.named();
    String sign =
        switch (arithmetic.operator()) {
          case PLUS -> " + ";
          case MINUS -> " - ";
          case TIMES -> " times ";
          case DIVIDED_BY -> " divided by ";
        };
    if (isShare(arithmetic)) {
      String whole = part(arithmetic.right(), 2);
      boolean minus = whole.startsWith("-");
      return part(arithmetic.left(), 2) + " of " + (minus ? "(" + whole + ")" : whole);
    }
    boolean product = isProduct(arithmetic.operator());
    String left = part(arithmetic.left(), product ? 1 : 0);
    String right = part(arithmetic.right(), product ? 2 : 1);
    // In a sum, only one certain element can be named.
    if (clause.named() > named) {
      clause.fail();
    }
    return left + sign + right;
  }

  /** {@code 80 % of its depth}, which has the kind of value that the whole has. */
  private static boolean isShare(Value.Arithmetic arithmetic) {
    return arithmetic.operator() == Operator.TIMES
        && arithmetic.left() instanceof Value.Literal literal
        && literal.quantity().dimension().equals(Dimension.PERCENT)
        && literal.quantity().number().signum() >= 0
        && arithmetic.right().type() instanceof ValueType.Number whole
        && arithmetic.type().dimension().equals(whole.dimension());
  }

  private static boolean isProduct(Operator operator) {
    return operator == Operator.TIMES || operator == Operator.DIVIDED_BY;
  }

  /**
   * One side, in parentheses where it would be read otherwise.
   *
   * @param tightness 0 where sums may stand, 1 where only products may, 2 where neither may
   */
  private String part(Value value, int tightness) {
    listKnown = false;
    String words = value.accept(this);
    boolean loose =
        value instanceof Value.Arithmetic inner
            && (isProduct(inner.operator()) ? tightness > 1 : tightness > 0);
    return loose ? "(" + words + ")" : words;
  }

  @Override
  public String visitAggregate(Value.Aggregate aggregate) {
    clause.number(aggregate.variable());
    if (aggregate.function() == Value.Aggregate.Function.NEAREST) {
      return nearest(aggregate);
    }
    KindWords kind = KindWords.of(aggregate.variable(), aggregate.where());
    String of = aggregate.of().map(value -> made(aggregate, value)).orElse("");
    String function =
        switch (aggregate.function()) {
          case COUNT -> "number of ";
          case TOTAL -> "total ";
          case SMALLEST -> "smallest ";
          case LARGEST -> "largest ";
          case AVERAGE -> "average ";
          case NEAREST -> throw new IllegalStateException("written before");
        };
    return function + of + kind.plural() + clause.where(aggregate.variable(), kind);
  }

  /** {@code distance to the nearest stud (where ...)}: of all of them but the owner itself. */
  private String nearest(Value.Aggregate aggregate) {
    Value.Of of = (Value.Of) aggregate.of().orElseThrow();
    Optional<Condition> where = aggregate.where();
    if (where.isPresent() && isOther(where.get(), of.owner())) {
      where = Optional.empty();
    } else if (where.orElse(null) instanceof Condition.And and
        && and.parts().size() == 2
        && isOther(and.parts().get(0), of.owner())) {
      where = Optional.of(and.parts().get(1));
    }
    KindWords kind = KindWords.of(aggregate.variable(), where);
    return owned(of.owner(), clause.nearest(of, kind, aggregate.variable()));
  }

  private static boolean isOther(Condition condition, Reference owner) {
    return condition instanceof Condition.Not not
        && not.part() instanceof Condition.Same same
        && same.right().equals(owner);
  }

  @Override
  public String visitConditional(Value.Conditional conditional) {
    int named = clause.named();
    boolean list = listKnown;
    String condition = clause.condition(conditional.condition());
    bareFirst = false;
    listKnown = list;
    String then = conditional.then().accept(this);
    listKnown = list;
    String otherwise = conditional.otherwise().accept(this);
    // In a choice of values, only one certain element can be named.
    if (clause.named() > named) {
      clause.fail();
    }
    return "(if " + condition + " then " + then + " otherwise " + otherwise + ")";
  }

  /** The property of the counted elements; its slots speak of what stands outside. */
  private String made(Value.Aggregate aggregate, Value value) {
    if (value instanceof Value.Of of
        && of.owner().equals(new Reference.Bound(aggregate.variable()))) {
      int named = clause.named();
      String words = clause.property(of);
      if (clause.named() > named) {
        clause.fail();
      }
      return words + " of ";
    }
    if (value instanceof Value.Lookup lookup
        && lookup.owner().equals(new Reference.Bound(aggregate.variable()))) {
      return lookup.table().name() + " of ";
    }
    clause.hinder(
        Obstacle.Kind.MADE_OF_NO_PROPERTY,
        "A total, average, largest or smallest can only be of a property of the "
            + aggregate.variable().noun().plural()
            + " themselves.");
    return "";
  }
}
