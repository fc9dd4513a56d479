package org.rimefast.lang.internal.paraphrase;

import java.util.List;
import java.util.Optional;
import org.rimefast.lang.rule.Argument;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Constant;
import org.rimefast.lang.rule.Question;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Table;
import org.rimefast.lang.rule.Term;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.source.Span;

/**
 * Typed nodes as they would be without a text: two that mean the same are equal, wherever and in
 * whatever words they were written. The reasons and sources of constants and terms are left out.
 */
public final class WithoutPlaces implements Condition.Visitor<Condition>, Value.Visitor<Value> {
  private static final Span NOWHERE = new Span(0, 0);
  private static final WithoutPlaces INSTANCE = new WithoutPlaces();

  private WithoutPlaces() {}

  /** What a rule asks of whom, to be compared with another's. */
  public static List<Object> of(Rule rule) {
    return List.of(
        rule.subject(),
        rule.where().map(WithoutPlaces::of),
        rule.onlyIf().map(WithoutPlaces::of),
        of(rule.requirement()));
  }

  /** A condition. */
  public static Condition of(Condition condition) {
    return condition.accept(INSTANCE);
  }

  /** A term. */
  public static Term of(Term term) {
    return new Term(
        term.singular(),
        term.plural(),
        term.element(),
        of(term.condition()),
        Optional.empty(),
        Optional.empty(),
        NOWHERE);
  }

  /** A table. */
  public static Table of(Table table) {
    return new Table(
        table.name(),
        table.element(),
        table.inputs().stream().map(input -> input.accept(INSTANCE)).toList(),
        table.rows().stream()
            .map(row -> new Table.Row(cells(row.cells()), row.result().accept(INSTANCE), NOWHERE))
            .toList(),
        table
            .otherwise()
            .map(
                last ->
                    new Table.Otherwise(
                        last.result().accept(INSTANCE),
                        last.cases().stream().map(WithoutPlaces::cells).toList(),
                        NOWHERE)),
        table.type(),
        Optional.empty(),
        Optional.empty(),
        NOWHERE);
  }

  private static List<Table.Cell> cells(List<Table.Cell> cells) {
    return cells.stream().map(WithoutPlaces::cell).toList();
  }

  private static Table.Cell cell(Table.Cell cell) {
    return cell instanceof Table.Cell.Numbers numbers
        ? new Table.Cell.Numbers(
            numbers.ranges().stream()
                .map(
                    range ->
                        new Table.Range(
                            range.low().map(WithoutPlaces::end),
                            range.high().map(WithoutPlaces::end)))
                .toList())
        : cell;
  }

  private static Table.End end(Table.End end) {
    return new Table.End(literal(end.limit()), end.included());
  }

  private static Constant of(Constant constant) {
    return new Constant(
        constant.name(), literal(constant.value()), Optional.empty(), Optional.empty(), NOWHERE);
  }

  private static Value.Literal literal(Value.Literal literal) {
    return new Value.Literal(literal.quantity(), literal.type(), NOWHERE);
  }

  private static List<Condition> all(List<Condition> parts) {
    return parts.stream().map(WithoutPlaces::of).toList();
  }

  private List<Argument> arguments(List<Argument> arguments) {
    return arguments.stream().map(this::argument).toList();
  }

  private Argument argument(Argument argument) {
    if (argument instanceof Value value) {
      return value.accept(this);
    }
    if (argument instanceof Argument.Along along) {
      return new Argument.Along(along.stretch(), arguments(along.arguments()), NOWHERE);
    }
    return argument instanceof Argument.Those those
        ? new Argument.Those(those.variable(), those.where().map(WithoutPlaces::of), NOWHERE)
        : argument;
  }

  @Override
  public Condition visitAnd(Condition.And and) {
    return new Condition.And(all(and.parts()), NOWHERE);
  }

  @Override
  public Condition visitOr(Condition.Or or) {
    return new Condition.Or(all(or.parts()), NOWHERE);
  }

  @Override
  public Condition visitNot(Condition.Not not) {
    return new Condition.Not(of(not.part()), NOWHERE);
  }

  @Override
  public Condition visitCompare(Condition.Compare compare) {
    return new Condition.Compare(
        compare.left().accept(this), compare.comparison(), compare.right().accept(this), NOWHERE);
  }

  @Override
  public Condition visitHolds(Condition.Holds holds) {
    return new Condition.Holds(
        holds.relation(), holds.subject(), arguments(holds.arguments()), NOWHERE);
  }

  @Override
  public Condition visitIsA(Condition.IsA isA) {
    return new Condition.IsA(isA.subject(), isA.noun(), isA.term().map(WithoutPlaces::of), NOWHERE);
  }

  @Override
  public Condition visitAnswered(Condition.Answered answered) {
    Question question = answered.question();
    Question same =
        question
            .limit()
            .map(
                limit ->
                    question.withLimit(
                        new Question.Limit(limit.comparison(), limit.value().accept(this))))
            .orElse(question);
    return new Condition.Answered(answered.subject(), same, NOWHERE);
  }

  @Override
  public Condition visitSame(Condition.Same same) {
    return new Condition.Same(same.left(), same.right(), NOWHERE);
  }

  @Override
  public Condition visitQuantified(Condition.Quantified quantified) {
    return new Condition.Quantified(
        quantified.quantifier(),
        quantified.number(),
        quantified.variable(),
        quantified.others(),
        quantified.where().map(WithoutPlaces::of),
        of(quantified.body()),
        NOWHERE);
  }

  @Override
  public Value visitLiteral(Value.Literal literal) {
    return literal(literal);
  }

  @Override
  public Value visitWord(Value.Word word) {
    return new Value.Word(word.word(), word.type(), NOWHERE);
  }

  @Override
  public Value visitText(Value.Text text) {
    return new Value.Text(text.text(), text.type(), NOWHERE);
  }

  @Override
  public Value visitNamed(Value.Named named) {
    return new Value.Named(of(named.constant()), NOWHERE);
  }

  @Override
  public Value visitOf(Value.Of of) {
    return new Value.Of(of.property(), of.owner(), arguments(of.arguments()), NOWHERE);
  }

  @Override
  public Value visitArithmetic(Value.Arithmetic arithmetic) {
    return new Value.Arithmetic(
        arithmetic.operator(),
        arithmetic.left().accept(this),
        arithmetic.right().accept(this),
        arithmetic.type(),
        NOWHERE);
  }

  @Override
  public Value visitAggregate(Value.Aggregate aggregate) {
    return new Value.Aggregate(
        aggregate.function(),
        aggregate.variable(),
        aggregate.where().map(WithoutPlaces::of),
        aggregate.of().map(value -> value.accept(this)),
        aggregate.type(),
        NOWHERE);
  }

  @Override
  public Value visitLookup(Value.Lookup lookup) {
    return new Value.Lookup(of(lookup.table()), lookup.owner(), NOWHERE);
  }

  @Override
  public Value visitConditional(Value.Conditional conditional) {
    return new Value.Conditional(
        of(conditional.condition()),
        conditional.then().accept(this),
        conditional.otherwise().accept(this),
        conditional.type(),
        NOWHERE);
  }
}
