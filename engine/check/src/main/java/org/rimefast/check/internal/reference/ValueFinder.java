package org.rimefast.check.internal.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.rimefast.check.Arguments;
import org.rimefast.check.Evidence;
import org.rimefast.check.Reading;
import org.rimefast.check.Stretches;
import org.rimefast.check.Truth;
import org.rimefast.check.Word;
import org.rimefast.check.internal.Arithmetics;
import org.rimefast.check.internal.Words;
import org.rimefast.lang.rule.Argument;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.ValueType;

/** Works out the values of expressions. */
final class ValueFinder {
  private final Scope scope;

  ValueFinder(Scope scope) {
    this.scope = scope;
  }

  /** A number, as an interval in SI units. */
  Outcome<Outcome.Interval> number(Value value) {
    return value.accept(numbers);
  }

  /** A word or a text. */
  Outcome<String> text(Value value) {
    return value.accept(texts);
  }

  private final Value.Visitor<Outcome<Outcome.Interval>> numbers =
      new Value.Visitor<>() {
        @Override
        public Outcome<Outcome.Interval> visitLiteral(Value.Literal literal) {
          double si = Words.si(literal);
          return Outcome.of(new Outcome.Interval(si, si));
        }

        @Override
        public Outcome<Outcome.Interval> visitNamed(Value.Named named) {
          return visitLiteral(named.constant().value());
        }

        @Override
        public Outcome<Outcome.Interval> visitOf(Value.Of of) {
          Word.NumberWord word = scope.words().number(of.property());
          return ask(of, word, (element, arguments) -> measured(word, element, arguments, of));
        }

        @Override
        public Outcome<Outcome.Interval> visitArithmetic(Value.Arithmetic arithmetic) {
          Outcome<Outcome.Interval> left = number(arithmetic.left());
          Outcome<Outcome.Interval> right = number(arithmetic.right());
          if (left.value().isEmpty() || right.value().isEmpty()) {
            return Outcome.<Outcome.Interval>without(left).and(right);
          }
          Reading a = reading(left.value().get());
          Arithmetics.combine(arithmetic.operator(), a, reading(right.value().get()));
          Outcome<Outcome.Interval> result =
              a.isPresent()
                  ? Outcome.of(new Outcome.Interval(a.least(), a.most()))
                  : Outcome.failed(
                      "\""
                          + quote(arithmetic)
                          + "\" cannot be worked out: "
                          + (arithmetic.operator() == Value.Arithmetic.Operator.DIVIDED_BY
                              ? "it divides by what is or may be zero"
                              : "the number is too great"));
          return result.and(left).and(right);
        }

        @Override
        public Outcome<Outcome.Interval> visitLookup(Value.Lookup lookup) {
          return new TableLookup(lookup, scope).number();
        }

        @Override
        public Outcome<Outcome.Interval> visitConditional(Value.Conditional conditional) {
          return choose(conditional, part -> number(part), ValueFinder::hull);
        }

        @Override
        public Outcome<Outcome.Interval> visitAggregate(Value.Aggregate aggregate) {
          return Aggregates.of(aggregate, scope, quote(aggregate));
        }

        @Override
        public Outcome<Outcome.Interval> visitWord(Value.Word word) {
          throw Words.mistyped(word);
        }

        @Override
        public Outcome<Outcome.Interval> visitText(Value.Text text) {
          throw Words.mistyped(text);
        }
      };

  private final Value.Visitor<Outcome<String>> texts =
      new Words.OnlyWords<>() {
        @Override
        public Outcome<String> visitWord(Value.Word word) {
          return Outcome.of(word.word());
        }

        @Override
        public Outcome<String> visitText(Value.Text text) {
          return Outcome.of(text.text());
        }

        @Override
        public Outcome<String> visitLookup(Value.Lookup lookup) {
          return new TableLookup(lookup, scope).word();
        }

        @Override
        public Outcome<String> visitConditional(Value.Conditional conditional) {
          return choose(
              conditional,
              part -> text(part),
              (one, other) -> one.equals(other) ? Optional.of(one) : Optional.empty());
        }

        @Override
        public Outcome<String> visitOf(Value.Of of) {
          if (of.property().type() instanceof ValueType.Choice choice) {
            Word.ChoiceWord word = scope.words().choice(of.property());
            return ask(
                of,
                word,
                (element, arguments) -> {
                  int place = word.function().choose(scope.facts(), element, arguments);
                  return place < 0 ? Outcome.nothing() : Outcome.of(choice.words().get(place));
                });
          }
          Word.TextWord word = scope.words().text(of.property());
          return ask(
              of,
              word,
              (element, arguments) ->
                  word.function()
                      .tell(scope.facts(), element, arguments)
                      .map(Outcome::of)
                      .orElse(Outcome.nothing()));
        }
      };

  private static Optional<Outcome.Interval> hull(Outcome.Interval one, Outcome.Interval other) {
    return Optional.of(
        new Outcome.Interval(
            Math.min(one.least(), other.least()), Math.max(one.most(), other.most())));
  }

  /**
   * One of two values.
   *
   * @param both what is known of the value if it may be either
   */
  private <T> Outcome<T> choose(
      Value.Conditional conditional,
      Function<Value, Outcome<T>> find,
      BiFunction<T, T, Optional<T>> both) {
    Evidence condition = new ConditionExplainer(scope, true).explain(conditional.condition());
    Outcome<Void> why =
        Outcome.seen(List.of(new Evidence.Fact("chosen because", condition.statement())));
    if (condition.truth() != Truth.UNKNOWN) {
      boolean then = condition.truth() == Truth.TRUE;
      return find.apply(then ? conditional.then() : conditional.otherwise()).and(why);
    }
    Outcome<Void> unknown = Reasons.outcome(condition);
    if (unknown.failure().isPresent()) {
      return Outcome.without(unknown);
    }
    Outcome<T> one = find.apply(conditional.then());
    Outcome<T> other = find.apply(conditional.otherwise());
    Optional<T> value =
        one.value().isPresent() && other.value().isPresent()
            ? both.apply(one.value().get(), other.value().get())
            : Optional.empty();
    Outcome<T> result = new Outcome<>(value, Optional.empty(), List.of(), List.of(), List.of());
    Outcome<T> all = result.and(one).and(other).and(unknown);
    return all.missing().isEmpty() && value.isEmpty()
        ? all.and(
            Outcome.none("it cannot be told whether " + quote(conditional.condition().span())))
        : all;
  }

  private interface Ask<T> {
    Outcome<T> ask(int element, Arguments arguments);
  }

  private <T> Outcome<T> ask(Value.Of of, Word word, Ask<T> question) {
    Outcome<Integer> owner = ElementFinder.find(of.owner(), scope);
    if (owner.value().isEmpty()) {
      return Outcome.without(owner);
    }
    int element = owner.value().get();
    Outcome<Arguments> arguments = arguments(element, of.arguments());
    if (arguments.value().isEmpty()) {
      return Outcome.without(arguments);
    }
    Outcome<T> answer = question.ask(element, arguments.value().get());
    Outcome<T> explained = ElementFinder.explained(word, element, arguments.value().get(), scope);
    // What is missing of a value that is known in part may be why it is not known well enough.
    return answer.value().isPresent()
        // What the plan lacks may be all that keeps a number from being certain.
        ? new Outcome<>(
            answer.value(), Optional.empty(), explained.facts(), explained.missing(), List.of())
        : answer.and(explained);
  }

  private Outcome<Outcome.Interval> measured(
      Word.NumberWord word, int element, Arguments arguments, Value.Of of) {
    Reading reading = new Reading();
    word.function().measure(scope.facts(), element, arguments, reading);
    if (reading.isFailed()) {
      return Outcome.failed("\"" + of.property() + "\" cannot be worked out");
    }
    return reading.isPresent()
        ? Outcome.of(new Outcome.Interval(reading.least(), reading.most()))
        : Outcome.nothing();
  }

  /** The values at the slots of a word that is said of {@code element}. */
  Outcome<Arguments> arguments(int element, List<Argument> arguments) {
    return argumentsBut(-1, element, arguments);
  }

  /** The same with no element at one slot. */
  Outcome<Arguments> argumentsBut(int open, int element, List<Argument> arguments) {
    List<ElementFinder.Filled> slots = new ArrayList<>();
    for (Argument argument : arguments) {
      Outcome<ElementFinder.Filled> slot =
          slots.size() == open ? Outcome.of(handle(-1)) : slot(element, argument);
      if (slot.value().isEmpty()) {
        return Outcome.without(slot);
      }
      slots.add(slot.value().get());
    }
    return Outcome.of(new ElementFinder.FixedArguments(slots));
  }

  private Outcome<ElementFinder.Filled> slot(int element, Argument argument) {
    if (argument instanceof Reference reference) {
      return ElementFinder.find(reference, scope).map(ValueFinder::handle);
    }
    if (argument instanceof Argument.Along along) {
      return stretches(element, along)
          .map(found -> new ElementFinder.Filled(-1, Optional.empty(), Optional.of(found)));
    }
    Value value = (Value) argument;
    if (value.type() instanceof ValueType.Choice choice) {
      return text(value).map(word -> handle(choice.words().indexOf(word)));
    }
    return number(value)
        .map(number -> new ElementFinder.Filled(-1, Optional.of(number), Optional.empty()));
  }

  private static ElementFinder.Filled handle(int handle) {
    return new ElementFinder.Filled(handle, Optional.empty(), Optional.empty());
  }

  private Outcome<Stretches> stretches(int element, Argument.Along along) {
    Outcome<Arguments> arguments = arguments(element, along.arguments());
    if (arguments.value().isEmpty()) {
      return Outcome.without(arguments);
    }
    Word.StretchWord word = scope.words().stretch(along.stretch());
    Stretches found = new Stretches();
    word.function().find(scope.facts(), element, arguments.value().get(), found);
    return found.isKnown()
        ? Outcome.of(found)
        : ElementFinder.explained(word, element, arguments.value().get(), scope);
  }

  private static Reading reading(Outcome.Interval interval) {
    Reading reading = new Reading();
    reading.between(interval.least(), interval.most());
    return reading;
  }

  private String quote(Value value) {
    return quote(value.span());
  }

  private String quote(Span span) {
    return scope.source().textOf(span).replaceAll("\\s+", " ");
  }
}
