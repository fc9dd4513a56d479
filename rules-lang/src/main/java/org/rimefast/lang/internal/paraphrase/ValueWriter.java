package org.rimefast.lang.internal.paraphrase;

import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.rule.Value.Arithmetic.Operator;
import org.rimefast.lang.vocabulary.ValueType;

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
    boolean bare = of.owner().equals(clause.scope().bare());
    boolean its = of.owner().equals(clause.scope().it());
    String before = its && !(bare && bareFirst) ? "its " : "";
    String filled = clause.property(of);
    return bare || its ? before + filled : filled + " of " + clause.element(of.owner());
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
    boolean product = isProduct(arithmetic.operator());
    String left = part(arithmetic.left(), product ? 1 : 0);
    String right = part(arithmetic.right(), product ? 2 : 1);
    // In a sum, only one certain element can be named.
    if (clause.named() > named) {
      clause.fail();
    }
    return left + sign + right;
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
    KindWords kind = KindWords.of(aggregate.variable(), aggregate.where());
    String of = aggregate.of().map(value -> made(aggregate, value)).orElse("");
    String function =
        switch (aggregate.function()) {
          case COUNT -> "number of ";
          case TOTAL -> "total ";
          case SMALLEST -> "smallest ";
          case LARGEST -> "largest ";
          case AVERAGE -> "average ";
        };
    return function + of + kind.plural() + clause.where(aggregate.variable(), kind);
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
    clause.hinder(
        Obstacle.Kind.MADE_OF_NO_PROPERTY,
        "A total, average, largest or smallest can only be of a property of the "
            + aggregate.variable().noun().plural()
            + " themselves.");
    return "";
  }
}
