package org.rimefast.lang;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Supplier;
import org.rimefast.lang.internal.resolve.Typing;
import org.rimefast.lang.rule.Argument;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Condition.Quantified.Quantifier;
import org.rimefast.lang.rule.Constant;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Severity;
import org.rimefast.lang.rule.Term;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.rule.Variable;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Link;
import org.rimefast.lang.vocabulary.Noun;
import org.rimefast.lang.vocabulary.Property;
import org.rimefast.lang.vocabulary.Relation;
import org.rimefast.lang.vocabulary.Slot;
import org.rimefast.lang.vocabulary.Stretch;
import org.rimefast.lang.vocabulary.ValueType;
import org.rimefast.lang.vocabulary.Vocabulary;
import org.rimefast.units.Dimension;
import org.rimefast.units.Quantity;
import org.rimefast.units.QuantityParser;
import org.rimefast.units.Unit;
import org.rimefast.units.Units;

/**
 * Makes typed rules without any text: well typed by construction, of every kind of node, at any
 * place where its type fits.
 */
final class RandomRules {
  /** The words of {@link Words} but for the one that is ambiguous on purpose. */
  static final Vocabulary VOCABULARY = withoutTrap();

  private static final Span NOWHERE = new Span(0, 0);
  private static final int DEEPEST = 4;

  private final Random random;
  private final List<Constant> constants = new ArrayList<>();
  private final List<Term> terms = new ArrayList<>();

  RandomRules(long seed) {
    this.random = new Random(seed);
    constants.add(constant("foam cover", "2 in"));
    constants.add(constant("warm limit", "18 degC"));
    constants.add(constant("rise", "1.5 K"));
    constants.add(constant("share", "60 %"));
    constants.add(constant("many", "12"));
    term("damp room", "damp rooms", Words.ROOM);
    term("deep box", "deep boxes", Words.BOX);
    term("held stud", "held studs", Words.STUD);
    term("sound metal part", "sound metal parts", Words.METAL);
  }

  private static Vocabulary withoutTrap() {
    Vocabulary all = Words.vocabulary();
    List<Stretch> stretches =
        List.of(
            new Stretch("whole", "along its whole length", Words.CABLE, List.of()),
            new Stretch("before", "before _", Words.CABLE, List.of(new Slot.Element(Words.BOX))),
            new Stretch(
                "between",
                "between _ and _",
                Words.CABLE,
                List.of(new Slot.Element(Words.BOX), new Slot.Element(Words.METAL))));
    List<Property> properties =
        new ArrayList<>(
            all.properties().stream().filter(p -> !p.pattern().startsWith("reach")).toList());
    properties.add(
        new Property(
            "cable.gap",
            "gap to _ _",
            Words.CABLE,
            List.of(new Slot.Element(Words.METAL), new Slot.Along(Words.CABLE)),
            Words.LENGTH));
    List<Relation> relations = new ArrayList<>(all.relations());
    relations.add(
        new Relation(
            "cross",
            Relation.Form.VERB,
            "cross _ _",
            "crosses _ _",
            Words.CABLE,
            List.of(new Slot.Element(Words.STUD), new Slot.Along(Words.CABLE))));
    relations.add(
        new Relation(
            "joined",
            Relation.Form.BE,
            "joined to _ by way of _",
            "joined to _ by way of _",
            Words.METAL,
            List.of(new Slot.Element(Words.METAL), new Slot.Kind(Words.METAL))));
    return new Vocabulary(all.stages(), all.nouns(), properties, all.links(), relations, stretches);
  }

  private static Constant constant(String name, String quantity) {
    return new Constant(name, literal(quantity), Optional.empty(), Optional.empty(), NOWHERE);
  }

  static Value.Literal literal(String text) {
    Quantity quantity = ((QuantityParser.Parsed.Ok) QuantityParser.parse(text)).quantity();
    return new Value.Literal(quantity, Typing.typeOf(quantity), NOWHERE);
  }

  private void term(String singular, String plural, Noun noun) {
    Variable element = new Variable(0, noun);
    Condition condition = condition(List.of(element), 2);
    terms.add(
        new Term(
            singular, plural, element, condition, Optional.empty(), Optional.empty(), NOWHERE));
  }

  List<Constant> constants() {
    return constants;
  }

  List<Term> terms() {
    return terms;
  }

  Rule rule() {
    Variable subject = new Variable(0, any(VOCABULARY.nouns()));
    List<Variable> spoken = List.of(subject);
    return new Rule(
        "r-1",
        "Title",
        subject,
        maybe(3, () -> where(spoken, 1)),
        maybe(4, () -> condition(spoken, 1)),
        condition(spoken, 0),
        Severity.HOLD,
        "pre-foam",
        "reason",
        "common practice, no source",
        "",
        NOWHERE,
        NOWHERE);
  }

  private <T> T any(List<T> list) {
    return list.get(random.nextInt(list.size()));
  }

  private <T> Optional<T> maybe(int oneIn, Supplier<T> supplier) {
    return random.nextInt(oneIn) == 0 ? Optional.of(supplier.get()) : Optional.empty();
  }

  /** A condition of the variable named last, which often is a term. */
  private Condition where(List<Variable> spoken, int depth) {
    Variable last = spoken.get(spoken.size() - 1);
    Optional<Condition> term =
        terms.stream()
            .filter(t -> t.noun().equals(last.noun()))
            .findFirst()
            .map(t -> isA(new Reference.Bound(last), t.noun(), Optional.of(t)));
    return switch (random.nextInt(4)) {
      case 0 -> term.orElseGet(() -> condition(spoken, depth));
      case 1 -> {
        Condition more = condition(spoken, depth);
        yield term.<Condition>map(t -> new Condition.And(List.of(t, more), NOWHERE)).orElse(more);
      }
      default -> condition(spoken, depth);
    };
  }

  private Condition condition(List<Variable> spoken, int depth) {
    boolean leaf = depth >= DEEPEST;
    return switch (random.nextInt(leaf ? 3 : 9)) {
      case 0 -> compare(spoken, depth);
      case 1, 2 -> said(spoken, depth).orElseGet(() -> compare(spoken, depth));
      case 3 -> new Condition.And(parts(spoken, depth), NOWHERE);
      case 4 -> new Condition.Or(parts(spoken, depth), NOWHERE);
      case 5 -> new Condition.Not(condition(spoken, depth + 1), NOWHERE);
      case 6 -> same(spoken).orElseGet(() -> compare(spoken, depth));
      default -> quantified(spoken, depth);
    };
  }

  private List<Condition> parts(List<Variable> spoken, int depth) {
    List<Condition> parts = new ArrayList<>();
    for (int i = random.nextInt(2) - 2; i < 1; i++) {
      parts.add(condition(spoken, depth + 1));
    }
    return parts;
  }

  private Condition quantified(List<Variable> spoken, int depth) {
    Noun noun = any(VOCABULARY.nouns());
    Noun subject = spoken.get(0).noun();
    Variable variable = new Variable(spoken.size(), noun);
    List<Variable> inside = new ArrayList<>(spoken);
    inside.add(variable);
    Quantifier quantifier = any(List.of(Quantifier.values()));
    boolean counted = quantifier.ordinal() >= Quantifier.AT_LEAST.ordinal();
    boolean related = noun.isA(subject) || subject.isA(noun);
    return new Condition.Quantified(
        quantifier,
        quantifier == Quantifier.ALL_BUT ? 1 + random.nextInt(3) : counted ? random.nextInt(4) : 0,
        variable,
        related && random.nextInt(3) == 0,
        maybe(3, () -> where(inside, depth + 1)),
        condition(inside, depth + (random.nextInt(3) == 0 ? 1 : DEEPEST)),
        NOWHERE);
  }

  /** Two references that may lead to one element. */
  private Optional<Condition> same(List<Variable> spoken) {
    for (int i = 0; i < 20; i++) {
      Reference left = reference(spoken);
      Reference right = reference(spoken);
      if (!left.equals(right) && left.noun().equals(right.noun())) {
        return Optional.of(new Condition.Same(left, right, NOWHERE));
      }
    }
    return Optional.empty();
  }

  /** A relation or a test of kind. */
  private Optional<Condition> said(List<Variable> spoken, int depth) {
    if (random.nextInt(4) == 0) {
      return Optional.of(kind(spoken)).filter(Optional::isPresent).map(Optional::get);
    }
    Relation relation = any(VOCABULARY.relations());
    Optional<Reference> subject = reference(spoken, relation.subject());
    Optional<List<Argument>> arguments = arguments(spoken, relation.slots(), depth);
    if (subject.isEmpty() || arguments.isEmpty()) {
      return Optional.empty();
    }
    // Of relations that are written alike, the narrower one is meant.
    Relation meant =
        VOCABULARY.relations().stream()
            .filter(r -> r.pattern().equals(relation.pattern()) && r.form() == relation.form())
            .filter(r -> subject.get().noun().isA(r.subject()))
            .filter(r -> fit(r.slots(), arguments.get()))
            .filter(r -> r.subject().isA(relation.subject()))
            .findFirst()
            .orElse(relation);
    return Optional.of(new Condition.Holds(meant, subject.get(), arguments.get(), NOWHERE));
  }

  private static boolean fit(List<Slot> slots, List<Argument> arguments) {
    for (int i = 0; i < slots.size(); i++) {
      if (slots.get(i) instanceof Slot.Element element
          && !(arguments.get(i) instanceof Reference reference
              && reference.noun().isA(element.noun()))) {
        return false;
      }
    }
    return true;
  }

  private Optional<Condition> kind(List<Variable> spoken) {
    Reference subject = reference(spoken);
    List<Condition> tests = new ArrayList<>();
    for (Noun noun : VOCABULARY.nouns()) {
      if (noun.isA(subject.noun()) && !subject.noun().isA(noun)) {
        tests.add(isA(subject, noun, Optional.empty()));
      }
    }
    for (Term term : terms) {
      if (term.noun().isA(subject.noun()) || subject.noun().isA(term.noun())) {
        tests.add(isA(subject, term.noun(), Optional.of(term)));
      }
    }
    return tests.isEmpty() ? Optional.empty() : Optional.of(any(tests));
  }

  private static Condition isA(Reference subject, Noun noun, Optional<Term> term) {
    return new Condition.IsA(subject, noun, term, NOWHERE);
  }

  private Reference reference(List<Variable> spoken) {
    // The one named last is what most conditions speak of.
    Variable variable = random.nextInt(3) > 0 ? spoken.get(spoken.size() - 1) : any(spoken);
    Reference reference = new Reference.Bound(variable);
    while (random.nextInt(3) == 0) {
      Reference owner = reference;
      List<Link> links =
          VOCABULARY.links().stream().filter(l -> owner.noun().isA(l.owner())).toList();
      if (links.isEmpty()) {
        return reference;
      }
      reference = new Reference.Linked(any(links), owner);
    }
    return reference;
  }

  private Optional<Reference> reference(List<Variable> spoken, Noun noun) {
    for (int i = 0; i < 20; i++) {
      Reference reference = reference(spoken);
      if (reference.noun().isA(noun)) {
        return Optional.of(reference);
      }
    }
    return Optional.empty();
  }

  private Optional<List<Argument>> arguments(List<Variable> spoken, List<Slot> slots, int depth) {
    List<Argument> arguments = new ArrayList<>();
    for (Slot slot : slots) {
      Optional<? extends Argument> argument = argument(spoken, slot, depth);
      if (argument.isEmpty()) {
        return Optional.empty();
      }
      arguments.add(argument.get());
    }
    return Optional.of(arguments);
  }

  private Optional<? extends Argument> argument(List<Variable> spoken, Slot slot, int depth) {
    if (slot instanceof Slot.Element element) {
      return reference(spoken, element.noun());
    }
    if (slot instanceof Slot.Along) {
      Stretch stretch = any(VOCABULARY.stretches());
      return arguments(spoken, stretch.slots(), depth)
          .map(arguments -> new Argument.Along(stretch, arguments, NOWHERE));
    }
    if (slot instanceof Slot.Kind kind) {
      Noun noun = any(VOCABULARY.nouns().stream().filter(n -> n.isA(kind.noun())).toList());
      Variable variable = new Variable(spoken.size(), noun);
      return Optional.of(
          new Argument.Those(variable, inside(spoken, variable, depth + 1), NOWHERE));
    }
    return Optional.of(value(spoken, ((Slot.Of) slot).type(), depth + 1));
  }

  private Condition compare(List<Variable> spoken, int depth) {
    Optional<Value> words = random.nextInt(4) == 0 ? property(spoken, null) : Optional.empty();
    if (words.isPresent() && !(words.get().type() instanceof ValueType.Number)) {
      return new Condition.Compare(
          words.get(),
          random.nextBoolean() ? Comparison.EQUAL : Comparison.NOT_EQUAL,
          value(spoken, words.get().type(), depth),
          NOWHERE);
    }
    ValueType.Number type =
        any(List.of(Words.LENGTH, Words.TEMPERATURE, Words.NUMBER, Words.PERCENT));
    Value left = number(spoken, type.dimension(), depth);
    Value right = number(spoken, type.dimension(), depth);
    return new Condition.Compare(
        Typing.adapt(left, right.type()),
        any(List.of(Comparison.values())),
        Typing.adapt(right, left.type()),
        NOWHERE);
  }

  private Value value(List<Variable> spoken, ValueType type, int depth) {
    if (type instanceof ValueType.Choice choice) {
      return new Value.Word(any(choice.words()), choice, NOWHERE);
    }
    return type instanceof ValueType.Number number
        ? number(spoken, number.dimension(), depth)
        : new Value.Text(
            any(List.of("A 1", "-- no comment", "must")), new ValueType.Text(), NOWHERE);
  }

  private Value number(List<Variable> spoken, Dimension dimension, int depth) {
    return switch (random.nextInt(depth >= DEEPEST ? 4 : 10)) {
      case 0 -> literal(dimension);
      case 1, 2 -> property(spoken, dimension).orElseGet(() -> literal(dimension));
      case 3 ->
          constants.stream()
              .filter(c -> c.value().quantity().dimension().equals(dimension))
              .findFirst()
              .<Value>map(c -> new Value.Named(c, NOWHERE))
              .orElseGet(() -> literal(dimension));
      case 4, 5 -> arithmetic(spoken, dimension, depth + 1);
      case 7 -> choice(spoken, dimension, depth + 1);
      case 8 ->
          nearest(spoken, depth + 1)
              .filter(value -> dimension.equals(Dimension.LENGTH))
              .orElseGet(() -> literal(dimension));
      case 9 ->
          dimension.isPoint()
              ? literal(dimension)
              : Typing.shareOf(literal("80 %"), number(spoken, dimension, depth + 1), NOWHERE)
                  .get();
      default -> aggregate(spoken, dimension, depth + 1).orElseGet(() -> literal(dimension));
    };
  }

  private Value choice(List<Variable> spoken, Dimension dimension, int depth) {
    Value then = number(spoken, dimension, depth);
    Value otherwise = Typing.adapt(number(spoken, dimension, depth), then.type());
    return new Value.Conditional(
        condition(spoken, depth + 1),
        then,
        otherwise,
        Typing.either(then.type(), otherwise.type()),
        NOWHERE);
  }

  private Optional<Value> nearest(List<Variable> spoken, int depth) {
    Property distance =
        VOCABULARY.properties().stream()
            .filter(property -> property.id().equals("box.distance"))
            .findFirst()
            .orElseThrow();
    Noun noun = any(VOCABULARY.nouns().stream().filter(n -> n.isA(Words.METAL)).toList());
    Variable variable = new Variable(spoken.size(), noun);
    return reference(spoken, distance.owner())
        .map(
            owner ->
                new Value.Aggregate(
                    Value.Aggregate.Function.NEAREST,
                    variable,
                    inside(spoken, variable, depth),
                    Optional.of(
                        new Value.Of(
                            distance, owner, List.of(new Reference.Bound(variable)), NOWHERE)),
                    Words.LENGTH,
                    NOWHERE));
  }

  private Value literal(Dimension dimension) {
    List<Unit> units = Units.all().stream().filter(u -> u.dimension().equals(dimension)).toList();
    String sign = random.nextInt(6) == 0 ? "-" : "";
    String number = any(List.of("2", "16-1/2", "0.5", "3/8", "40"));
    return literal((sign + number + " " + any(units).symbol()).strip());
  }

  private Optional<Value> property(
      List<Variable> spoken, @org.jspecify.annotations.Nullable Dimension dimension) {
    for (int i = 0; i < 20; i++) {
      Property property = any(VOCABULARY.properties());
      boolean fits =
          dimension == null
              || (property.type() instanceof ValueType.Number number
                  && number.dimension().equals(dimension));
      Optional<Reference> owner = reference(spoken, property.owner());
      Optional<List<Argument>> arguments = arguments(spoken, property.slots(), DEEPEST);
      if (fits && owner.isPresent() && arguments.isPresent()) {
        return Optional.of(new Value.Of(property, owner.get(), arguments.get(), NOWHERE));
      }
    }
    return Optional.empty();
  }

  private Value arithmetic(List<Variable> spoken, Dimension dimension, int depth) {
    boolean sum = random.nextBoolean();
    Value.Arithmetic.Operator operator;
    Value left;
    Value right;
    if (sum || dimension.isPoint() || dimension.equals(Dimension.PERCENT)) {
      operator =
          random.nextBoolean() ? Value.Arithmetic.Operator.PLUS : Value.Arithmetic.Operator.MINUS;
      left = number(spoken, dimension, depth);
      right =
          number(spoken, dimension.isPoint() ? Dimension.TEMPERATURE_DIFFERENCE : dimension, depth);
    } else {
      operator =
          random.nextBoolean()
              ? Value.Arithmetic.Operator.TIMES
              : Value.Arithmetic.Operator.DIVIDED_BY;
      left = number(spoken, dimension, depth);
      right = number(spoken, Dimension.NUMBER, depth);
    }
    return Typing.arithmetic(operator, left, right, NOWHERE).get();
  }

  private Optional<Value> aggregate(List<Variable> spoken, Dimension dimension, int depth) {
    if (dimension.equals(Dimension.NUMBER)) {
      Variable variable = new Variable(spoken.size(), any(VOCABULARY.nouns()));
      return Optional.of(
          new Value.Aggregate(
              Value.Aggregate.Function.COUNT,
              variable,
              inside(spoken, variable, depth),
              Optional.empty(),
              ValueType.Number.count(),
              NOWHERE));
    }
    Value.Aggregate.Function function =
        any(
            List.of(
                Value.Aggregate.Function.SMALLEST,
                Value.Aggregate.Function.LARGEST,
                Value.Aggregate.Function.AVERAGE,
                Value.Aggregate.Function.TOTAL));
    if (function == Value.Aggregate.Function.TOTAL && dimension.isPoint()) {
      return Optional.empty();
    }
    List<Property> properties =
        VOCABULARY.properties().stream()
            .filter(
                p ->
                    p.type() instanceof ValueType.Number number
                        && number.dimension().equals(dimension))
            .toList();
    if (properties.isEmpty()) {
      return Optional.empty();
    }
    Property property = any(properties);
    List<Noun> owners = VOCABULARY.nouns().stream().filter(n -> n.isA(property.owner())).toList();
    Variable variable = new Variable(spoken.size(), any(owners));
    return arguments(spoken, property.slots(), DEEPEST)
        .map(
            arguments ->
                new Value.Aggregate(
                    function,
                    variable,
                    inside(spoken, variable, depth),
                    Optional.of(
                        new Value.Of(property, new Reference.Bound(variable), arguments, NOWHERE)),
                    (ValueType.Number) property.type(),
                    NOWHERE));
  }

  private Optional<Condition> inside(List<Variable> spoken, Variable variable, int depth) {
    List<Variable> inside = new ArrayList<>(spoken);
    inside.add(variable);
    return maybe(2, () -> where(inside, depth));
  }
}
