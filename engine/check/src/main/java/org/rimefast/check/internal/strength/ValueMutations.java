package org.rimefast.check.internal.strength;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.rimefast.lang.rule.Argument;
import org.rimefast.lang.rule.Table;
import org.rimefast.lang.rule.Value;

/** The same for values. */
final class ValueMutations implements Value.Visitor<List<Changed<Value>>> {
  private static final ValueMutations INSTANCE = new ValueMutations();

  private ValueMutations() {}

  static List<Changed<Value>> of(Value value) {
    return value.accept(INSTANCE);
  }

  /** Changes of what stands at slots. */
  static <T> void arguments(
      List<Argument> arguments, Function<List<Argument>, T> enclosing, List<Changed<T>> all) {
    for (int i = 0; i < arguments.size(); i++) {
      int place = i;
      for (Changed<Argument> changed : of(arguments.get(i))) {
        all.add(changed.in(a -> enclosing.apply(Mutations.replaced(arguments, place, a))));
      }
    }
  }

  private static List<Changed<Argument>> of(Argument argument) {
    List<Changed<Argument>> all = new ArrayList<>();
    if (argument instanceof Value value) {
      of(value).forEach(changed -> all.add(changed.in(v -> v)));
    } else if (argument instanceof Argument.Those those) {
      Mutations.<Argument>optional(
          those.where(), where -> new Argument.Those(those.variable(), where, those.span()), all);
    } else if (argument instanceof Argument.Along along) {
      ValueMutations.<Argument>arguments(
          along.arguments(),
          slots -> new Argument.Along(along.stretch(), slots, along.span()),
          all);
    }
    return all;
  }

  @Override
  public List<Changed<Value>> visitLiteral(Value.Literal literal) {
    List<Changed<Value>> all = new ArrayList<>();
    for (Value.Literal moved : Steps.moved(literal)) {
      all.add(new Changed<>(moved, told(literal, moved), literal.span()));
    }
    Steps.otherUnit(literal)
        .ifPresent(other -> all.add(new Changed<>(other, told(literal, other), literal.span())));
    return all;
  }

  private static String told(Value.Literal from, Value.Literal to) {
    return from.quantity().text() + " from " + to.quantity().text();
  }

  /** A constant stands for its value; the change is told at the place of use. */
  @Override
  public List<Changed<Value>> visitNamed(Value.Named named) {
    List<Changed<Value>> all = new ArrayList<>();
    for (Changed<Value> changed : visitLiteral(named.constant().value())) {
      all.add(new Changed<>(changed.node(), changed.told(), named.span()));
    }
    return all;
  }

  @Override
  public List<Changed<Value>> visitWord(Value.Word word) {
    List<Changed<Value>> all = new ArrayList<>();
    for (String other : word.type().words()) {
      if (!other.equals(word.word())) {
        all.add(
            new Changed<>(
                new Value.Word(other, word.type(), word.span()),
                Mutations.apart(word.word(), other),
                word.span()));
      }
    }
    return all;
  }

  @Override
  public List<Changed<Value>> visitText(Value.Text text) {
    return List.of();
  }

  @Override
  public List<Changed<Value>> visitOf(Value.Of of) {
    List<Changed<Value>> all = new ArrayList<>();
    ValueMutations.<Value>arguments(
        of.arguments(), slots -> new Value.Of(of.property(), of.owner(), slots, of.span()), all);
    return all;
  }

  @Override
  public List<Changed<Value>> visitArithmetic(Value.Arithmetic sum) {
    List<Changed<Value>> all = new ArrayList<>();
    Value.Arithmetic.Operator other = opposite(sum.operator());
    if (Value.Arithmetic.resultOf(other, Steps.dimension(sum.left()), Steps.dimension(sum.right()))
        .filter(sum.type().dimension()::equals)
        .isPresent()) {
      all.add(
          new Changed<>(
              new Value.Arithmetic(other, sum.left(), sum.right(), sum.type(), sum.span()),
              Mutations.apart(words(sum.operator()), words(other)),
              sum.span()));
    }
    for (Changed<Value> changed : of(sum.left())) {
      all.add(
          changed.in(
              left ->
                  new Value.Arithmetic(sum.operator(), left, sum.right(), sum.type(), sum.span())));
    }
    for (Changed<Value> changed : of(sum.right())) {
      all.add(
          changed.in(
              right ->
                  new Value.Arithmetic(sum.operator(), sum.left(), right, sum.type(), sum.span())));
    }
    return all;
  }

  private static Value.Arithmetic.Operator opposite(Value.Arithmetic.Operator operator) {
    return switch (operator) {
      case PLUS -> Value.Arithmetic.Operator.MINUS;
      case MINUS -> Value.Arithmetic.Operator.PLUS;
      case TIMES -> Value.Arithmetic.Operator.DIVIDED_BY;
      case DIVIDED_BY -> Value.Arithmetic.Operator.TIMES;
    };
  }

  private static String words(Value.Arithmetic.Operator operator) {
    return switch (operator) {
      case PLUS -> "+";
      case MINUS -> "-";
      case TIMES -> "times";
      case DIVIDED_BY -> "divided by";
    };
  }

  @Override
  public List<Changed<Value>> visitAggregate(Value.Aggregate aggregate) {
    List<Changed<Value>> all = new ArrayList<>();
    for (Value.Aggregate.Function other : others(aggregate.function())) {
      all.add(
          new Changed<>(
              with(aggregate, other),
              Mutations.apart(words(aggregate.function()), words(other)),
              aggregate.span()));
    }
    Mutations.<Value>optional(
        aggregate.where(),
        where ->
            new Value.Aggregate(
                aggregate.function(),
                aggregate.variable(),
                where,
                aggregate.of(),
                aggregate.type(),
                aggregate.span()),
        all);
    return all;
  }

  private static Value with(Value.Aggregate aggregate, Value.Aggregate.Function function) {
    return new Value.Aggregate(
        function,
        aggregate.variable(),
        aggregate.where(),
        aggregate.of(),
        aggregate.type(),
        aggregate.span());
  }

  private static List<Value.Aggregate.Function> others(Value.Aggregate.Function function) {
    return switch (function) {
      case SMALLEST, AVERAGE -> List.of(Value.Aggregate.Function.LARGEST);
      case LARGEST -> List.of(Value.Aggregate.Function.SMALLEST);
      case TOTAL -> List.of(Value.Aggregate.Function.LARGEST);
      case COUNT, NEAREST -> List.of();
    };
  }

  private static String words(Value.Aggregate.Function function) {
    return switch (function) {
      case COUNT -> "number";
      case TOTAL -> "total";
      case SMALLEST -> "smallest";
      case LARGEST -> "largest";
      case AVERAGE -> "average";
      case NEAREST -> "nearest";
    };
  }

  @Override
  public List<Changed<Value>> visitConditional(Value.Conditional choice) {
    List<Changed<Value>> all = new ArrayList<>();
    all.add(
        new Changed<>(
            conditional(choice, choice.otherwise(), choice.then()),
            "one value from the other",
            choice.span()));
    for (Changed<Value> changed : of(choice.then())) {
      all.add(changed.in(then -> conditional(choice, then, choice.otherwise())));
    }
    for (Changed<Value> changed : of(choice.otherwise())) {
      all.add(changed.in(otherwise -> conditional(choice, choice.then(), otherwise)));
    }
    Mutations.of(choice.condition())
        .forEach(
            changed ->
                all.add(
                    changed.in(
                        condition ->
                            new Value.Conditional(
                                condition,
                                choice.then(),
                                choice.otherwise(),
                                choice.type(),
                                choice.span()))));
    return all;
  }

  private static Value conditional(Value.Conditional choice, Value then, Value otherwise) {
    return new Value.Conditional(choice.condition(), then, otherwise, choice.type(), choice.span());
  }

  /** The result of each row; what the cells ask is left as the compiler found it whole. */
  @Override
  public List<Changed<Value>> visitLookup(Value.Lookup lookup) {
    List<Changed<Value>> all = new ArrayList<>();
    Table table = lookup.table();
    for (int i = 0; i < table.rows().size(); i++) {
      int place = i;
      Table.Row row = table.rows().get(i);
      for (Changed<Value> changed : of(row.result())) {
        all.add(
            changed.in(
                result -> {
                  Table.Row other = new Table.Row(row.cells(), result, row.span());
                  List<Table.Row> rows = Mutations.replaced(table.rows(), place, other);
                  return with(lookup, rows, table.otherwise());
                }));
      }
    }
    if (table.otherwise().isPresent()) {
      Table.Otherwise last = table.otherwise().get();
      for (Changed<Value> changed : of(last.result())) {
        all.add(
            changed.in(
                result ->
                    with(
                        lookup,
                        table.rows(),
                        Optional.of(new Table.Otherwise(result, last.cases(), last.span())))));
      }
    }
    return all;
  }

  private static Value with(
      Value.Lookup lookup, List<Table.Row> rows, Optional<Table.Otherwise> otherwise) {
    Table table = lookup.table();
    Table other =
        new Table(
            table.name(),
            table.element(),
            table.inputs(),
            rows,
            otherwise,
            table.type(),
            table.because(),
            table.source(),
            table.span());
    return new Value.Lookup(other, lookup.owner(), lookup.span());
  }
}
