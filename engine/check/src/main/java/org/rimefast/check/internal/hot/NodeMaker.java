package org.rimefast.check.internal.hot;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.rimefast.check.Truth;
import org.rimefast.check.Word;
import org.rimefast.check.internal.Sparing;
import org.rimefast.check.internal.Words;
import org.rimefast.lang.rule.Argument;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Question;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.rule.Variable;
import org.rimefast.lang.vocabulary.ValueType;

/** Makes nodes of typed conditions and values. */
final class NodeMaker implements Condition.Visitor<Nodes.Test> {
  private static final Nodes.Fill[] NO_SLOTS = {};

  private final Words words;
  private final Layout layout;
  private final int first;

  /**
   * A maker.
   *
   * @param first where the outermost variable stands in a frame
   */
  NodeMaker(Words words, Layout layout, int first) {
    this.words = words;
    this.layout = layout;
    this.first = first;
  }

  private int place(Variable variable) {
    return first + variable.index();
  }

  Nodes.Test test(Optional<Condition> condition) {
    return condition.isPresent() ? condition.get().accept(this) : frame -> Truth.TRUE;
  }

  @Override
  public Nodes.Test visitAnd(Condition.And and) {
    return new Logic.All(tests(and.parts()));
  }

  @Override
  public Nodes.Test visitOr(Condition.Or or) {
    return new Logic.Any(tests(or.parts()));
  }

  @Override
  public Nodes.Test visitNot(Condition.Not not) {
    return new Logic.Not(not.part().accept(this));
  }

  @Override
  public Nodes.Test visitCompare(Condition.Compare compare) {
    ValueType type = compare.left().type();
    if (type instanceof ValueType.Number) {
      return numbers(compare);
    }
    boolean equal = compare.comparison() == Comparison.EQUAL;
    if (type instanceof ValueType.Choice) {
      return new Compares.Words(
          compare.left().accept(choices), compare.right().accept(choices), equal);
    }
    return new Texts.Compared(compare.left().accept(texts), compare.right().accept(texts), equal);
  }

  private Nodes.Test numbers(Condition.Compare compare) {
    Nodes.Read left = compare.left().accept(numbers);
    Nodes.Read right = compare.right().accept(numbers);
    if (right instanceof Numbers.Fixed limit) {
      return new Compares.ToLimit(left, compare.comparison(), limit.value(), layout.reading());
    }
    return new Compares.Numbers(
        left, compare.comparison(), right, layout.reading(), layout.reading());
  }

  @Override
  public Nodes.Test visitHolds(Condition.Holds holds) {
    Word word = words.relation(holds.relation());
    if (word instanceof Word.ChainWord chain) {
      return chain(chain, holds);
    }
    Nodes.Fill[] fills = fills(holds.arguments());
    return new Relations.Holds(
        ((Word.RelationWord) word).function(),
        find(holds.subject()),
        fills,
        layout.slots(fills.length));
  }

  private Nodes.Test chain(Word.ChainWord chain, Condition.Holds holds) {
    List<Argument> arguments = holds.arguments();
    Chains.Barred barred = arguments.size() < 2 ? null : barred((Argument.Those) arguments.get(1));
    return new Chains.Reaches(
        holds.relation(),
        chain.function(),
        find(holds.subject()),
        find((Reference) arguments.get(0)),
        barred,
        layout.search());
  }

  private Chains.Barred barred(Argument.Those those) {
    layout.variable(place(those.variable()));
    return new Chains.Barred(
        words.noun(those.variable().noun()), place(those.variable()), test(those.where()));
  }

  /**
   * A term's condition has variables of its own, from 0 on. They get places in the frame behind all
   * that may be in use around the term.
   */
  @Override
  public Nodes.Test visitIsA(Condition.IsA isA) {
    Nodes.Find subject = find(isA.subject());
    if (isA.term().isEmpty()) {
      return new Relations.IsA(subject, words.noun(isA.noun()));
    }
    int own = layout.variables;
    layout.variable(own);
    Nodes.Test condition = isA.term().get().condition().accept(new NodeMaker(words, layout, own));
    return new Relations.IsOfTerm(subject, words.noun(isA.noun()), own, condition);
  }

  @Override
  public Nodes.Test visitSame(Condition.Same same) {
    return new Relations.Same(find(same.left()), find(same.right()));
  }

  @Override
  public Nodes.Test visitQuantified(Condition.Quantified quantified) {
    layout.variable(place(quantified.variable()));
    return new Relations.Quantified(
        quantified.quantifier(),
        quantified.number(),
        words.noun(quantified.variable().noun()),
        place(quantified.variable()),
        quantified.others() ? first : -1,
        test(quantified.where()),
        quantified.body().accept(this),
        candidates(Sparing.of(words, quantified)));
  }

  private @Nullable Candidates candidates(Optional<Sparing.Spare> found) {
    if (found.isEmpty()) {
      return null;
    }
    Sparing.Spare spare = found.get();
    Condition.Holds holds = spare.holds();
    Nodes.Fill[] fills = fills(holds.arguments());
    return new Candidates(
        spare.function(),
        find(spare.subjects() ? (Reference) holds.arguments().get(spare.slot()) : holds.subject()),
        spare.slot(),
        fills,
        layout.slots(fills.length),
        layout.list());
  }

  @Override
  public Nodes.Test visitAnswered(Condition.Answered answered) {
    Question question = answered.question();
    Question.Limit limit = question.limit().orElse(null);
    double number = 0;
    if (limit != null) {
      number =
          limit.value() instanceof Value.Named named
              ? Words.si(named.constant().value())
              : Words.si((Value.Literal) limit.value());
    }
    return new Answered(
        question.inspect(), question.answer(), limit, number, find(answered.subject()));
  }

  /** A table's inputs have a variable of their own, as a term's condition has. */
  private Lookups.Rows rows(Value.Lookup lookup) {
    Nodes.Find owner = find(lookup.owner());
    int own = layout.variables;
    layout.variable(own);
    NodeMaker inner = new NodeMaker(words, layout, own);
    List<Value> inputs = lookup.table().inputs();
    Nodes.@Nullable Read[] read = new Nodes.Read[inputs.size()];
    Nodes.@Nullable Choose[] choose = new Nodes.Choose[inputs.size()];
    for (int i = 0; i < inputs.size(); i++) {
      if (inputs.get(i).type() instanceof ValueType.Number) {
        read[i] = inputs.get(i).accept(inner.numbers);
      } else {
        choose[i] = inputs.get(i).accept(inner.choices);
      }
    }
    int slots = layout.slots(inputs.size());
    return LookupMaker.rows(lookup.table(), owner, own, read, choose, slots);
  }

  private Nodes.Test[] tests(List<Condition> parts) {
    return parts.stream().map(part -> part.accept(this)).toArray(Nodes.Test[]::new);
  }

  private Nodes.Find find(Reference reference) {
    if (reference instanceof Reference.Linked linked) {
      return new Elements.Linked(words.link(linked.link()).function(), find(linked.owner()));
    }
    return new Elements.Variable(place(((Reference.Bound) reference).variable()));
  }

  private Nodes.Fill[] fills(List<Argument> arguments) {
    return arguments.isEmpty()
        ? NO_SLOTS
        : arguments.stream().map(this::fill).toArray(Nodes.Fill[]::new);
  }

  private Nodes.Fill fill(Argument argument) {
    if (argument instanceof Reference reference) {
      return new Elements.FillElement(find(reference));
    }
    if (argument instanceof Argument.Along along) {
      Nodes.Fill[] fills = fills(along.arguments());
      return new Elements.FillStretches(
          words.stretch(along.stretch()).function(), fills, layout.slots(fills.length));
    }
    Value value = (Value) argument;
    return value.type() instanceof ValueType.Choice
        ? new Elements.FillWord(value.accept(choices))
        : new Elements.FillNumber(value.accept(numbers));
  }

  private final Value.Visitor<Nodes.Read> numbers =
      new Value.Visitor<>() {
        @Override
        public Nodes.Read visitLiteral(Value.Literal literal) {
          return new Numbers.Fixed(Words.si(literal));
        }

        @Override
        public Nodes.Read visitNamed(Value.Named named) {
          return visitLiteral(named.constant().value());
        }

        @Override
        public Nodes.Read visitOf(Value.Of of) {
          Word.NumberWord word = words.number(of.property());
          Nodes.Fill[] fills = fills(of.arguments());
          int slots = layout.slots(fills.length);
          return of.owner() instanceof Reference.Bound bound && fills.length == 0
              ? new Numbers.OwnProperty(word.function(), place(bound.variable()), slots)
              : new Numbers.Property(word.function(), find(of.owner()), fills, slots);
        }

        @Override
        public Nodes.Read visitArithmetic(Value.Arithmetic arithmetic) {
          return new Numbers.Arithmetic(
              arithmetic.operator(),
              arithmetic.left().accept(this),
              arithmetic.right().accept(this),
              layout.reading());
        }

        @Override
        public Nodes.Read visitLookup(Value.Lookup lookup) {
          return new Lookups.Numbers(rows(lookup), LookupMaker.numbers(lookup.table()));
        }

        @Override
        public Nodes.Read visitConditional(Value.Conditional conditional) {
          return new Choices.Numbers(
              conditional.condition().accept(NodeMaker.this),
              conditional.then().accept(this),
              conditional.otherwise().accept(this),
              layout.reading());
        }

        @Override
        public Nodes.Read visitAggregate(Value.Aggregate aggregate) {
          layout.variable(place(aggregate.variable()));
          Nodes.Read of =
              aggregate.of().isPresent() ? aggregate.of().get().accept(this) : new Numbers.Fixed(1);
          return new Numbers.Aggregate(
              aggregate.function(),
              words.noun(aggregate.variable().noun()),
              place(aggregate.variable()),
              test(aggregate.where()),
              candidates(Sparing.of(words, aggregate)),
              of,
              layout.reading(),
              layout.tally());
        }

        @Override
        public Nodes.Read visitWord(Value.Word word) {
          throw Words.mistyped(word);
        }

        @Override
        public Nodes.Read visitText(Value.Text text) {
          throw Words.mistyped(text);
        }
      };

  private final Value.Visitor<Nodes.Choose> choices =
      new Words.OnlyWords<>() {
        @Override
        public Nodes.Choose visitWord(Value.Word word) {
          return new Elements.FixedWord(word.type().words().indexOf(word.word()));
        }

        @Override
        public Nodes.Choose visitLookup(Value.Lookup lookup) {
          return new Lookups.Words(rows(lookup), LookupMaker.words(lookup.table()));
        }

        @Override
        public Nodes.Choose visitConditional(Value.Conditional conditional) {
          return new Choices.Words(
              conditional.condition().accept(NodeMaker.this),
              conditional.then().accept(this),
              conditional.otherwise().accept(this));
        }

        @Override
        public Nodes.Choose visitOf(Value.Of of) {
          Nodes.Fill[] fills = fills(of.arguments());
          return new Elements.ChosenWord(
              words.choice(of.property()).function(),
              find(of.owner()),
              fills,
              layout.slots(fills.length));
        }
      };

  private final Value.Visitor<Texts.Tell> texts =
      new Words.OnlyWords<>() {
        @Override
        public Texts.Tell visitText(Value.Text text) {
          Optional<String> known = Optional.of(text.text());
          return frame -> known;
        }

        @Override
        public Texts.Tell visitConditional(Value.Conditional conditional) {
          return new Choices.Telling(
              conditional.condition().accept(NodeMaker.this),
              conditional.then().accept(this),
              conditional.otherwise().accept(this));
        }

        @Override
        public Texts.Tell visitOf(Value.Of of) {
          Nodes.Fill[] fills = fills(of.arguments());
          return new Texts.Property(
              words.text(of.property()).function(),
              find(of.owner()),
              fills,
              layout.slots(fills.length));
        }
      };
}
