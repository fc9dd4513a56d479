package org.rimefast.lang.internal.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.internal.resolve.Constants;
import org.rimefast.lang.internal.resolve.Dictionary;
import org.rimefast.lang.internal.resolve.Opening;
import org.rimefast.lang.internal.resolve.PhraseReader;
import org.rimefast.lang.internal.resolve.Problems;
import org.rimefast.lang.internal.resolve.Reading;
import org.rimefast.lang.internal.resolve.ReadingObserver;
import org.rimefast.lang.internal.resolve.Result;
import org.rimefast.lang.internal.resolve.Scope;
import org.rimefast.lang.internal.resolve.Tables;
import org.rimefast.lang.internal.resolve.Terms;
import org.rimefast.lang.internal.resolve.Typing;
import org.rimefast.lang.internal.syntax.Clause;
import org.rimefast.lang.internal.syntax.Operand;
import org.rimefast.lang.internal.syntax.Phrase;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.ValueType;

/** Reads operands: phrases, and arithmetic around them. */
final class OperandReader implements PhraseReader.Nested {
  private static final int MOST_READINGS = 16;
  private static final int LONGEST_CHAIN = 100;

  private record Place(Scope scope, @Nullable ValueType wanted) {}

  private final Dictionary dictionary;
  private final Constants constants;
  private final Terms terms;
  private final Tables tables;
  private final SourceText source;
  private final ReadingObserver observer;

  // A phrase with several readings asks for what stands in its parentheses once for each; without
  // these, deep parentheses would cost two to the power of their depth.
  private final IdentityHashMap<Clause, Map<Place, Result<Condition>>> conditions =
      new IdentityHashMap<>();
  private final IdentityHashMap<Clause, Map<Place, List<Reading<Value>>>> groups =
      new IdentityHashMap<>();

  private final IdentityHashMap<Clause, Map<Place, List<Reading<Value>>>> choices =
      new IdentityHashMap<>();

  OperandReader(
      Dictionary dictionary, Constants constants, Terms terms, Tables tables, SourceText source) {
    this(dictionary, constants, terms, tables, source, ReadingObserver.NONE);
  }

  OperandReader(
      Dictionary dictionary,
      Constants constants,
      Terms terms,
      Tables tables,
      SourceText source,
      ReadingObserver observer) {
    this.dictionary = dictionary;
    this.constants = constants;
    this.terms = terms;
    this.tables = tables;
    this.source = source;
    this.observer = observer;
  }

  /** The text of a stretch on one line, for messages. */
  String textOf(Span span) {
    return source.textOf(span).replaceAll("--[^\r\n]*", "").replaceAll("\\s+", " ");
  }

  Dictionary dictionary() {
    return dictionary;
  }

  PhraseReader reader(Phrase phrase) {
    return new PhraseReader(phrase, dictionary, constants, terms, tables, this, observer);
  }

  @Override
  public Result<Condition> condition(Clause where, Scope scope) {
    Map<Place, Result<Condition>> known =
        conditions.computeIfAbsent(where, clause -> new HashMap<>());
    Place place = new Place(scope, null);
    Result<Condition> result = known.get(place);
    if (result == null) {
      result = where.accept(ClauseChecker.ofCondition(this, scope, false));
      known.put(place, result);
    }
    return result;
  }

  /** Forgets what stood in the parentheses of earlier sentences. */
  void forget() {
    conditions.clear();
    groups.clear();
    choices.clear();
  }

  /** A group is a value if it is one plain operand; it may hold a whole condition by mistake. */
  @Override
  public List<Reading<Value>> group(
      Phrase.GroupItem group, Scope scope, @Nullable ValueType wanted) {
    Map<Place, List<Reading<Value>>> known =
        groups.computeIfAbsent(group.condition(), clause -> new HashMap<>());
    Place place = new Place(scope, wanted);
    List<Reading<Value>> readings = known.get(place);
    if (readings == null) {
      readings = newGroup(group, scope, wanted);
      known.put(place, readings);
    }
    return readings;
  }

  private List<Reading<Value>> newGroup(
      Phrase.GroupItem group, Scope scope, @Nullable ValueType wanted) {
    Optional<Operand> operand = operandOf(group);
    if (operand.isEmpty()) {
      return List.of(
          new Reading<>(
              0,
              Result.bad(
                  Problems.error(
                      DiagnosticCode.MISSING_COMPARISON,
                      group.span(),
                      "A condition stands here where a value belongs.",
                      "Parentheses around a value hold a sum, such as (clearance + 2 in).")),
              List.of(),
              scope));
    }
    Candidates<Value> values = values(operand.get(), scope, wanted);
    return values.isOk()
        ? values.readings()
        : List.of(new Reading<>(0, Result.bad(values.problems()), List.of(), scope));
  }

  @Override
  public List<Reading<Value>> choice(
      Phrase.ConditionalItem choice, Scope scope, @Nullable ValueType wanted) {
    Map<Place, List<Reading<Value>>> known =
        choices.computeIfAbsent(choice.condition(), clause -> new HashMap<>());
    Place place = new Place(scope, wanted);
    List<Reading<Value>> readings = known.get(place);
    if (readings == null) {
      Candidates<Value> values = new ChoiceChecker(this).check(choice, scope, wanted);
      readings =
          values.isOk()
              ? values.readings()
              : List.of(new Reading<>(0, Result.bad(values.problems()), List.of(), scope));
      known.put(place, readings);
    }
    return readings;
  }

  /** The operand in parentheses, if nothing else stands there. */
  static Optional<Operand> operandOf(Phrase.GroupItem group) {
    return group.condition() instanceof Clause.Leaf leaf
            && leaf.subject().isEmpty()
            && leaf.with().isEmpty()
            && leaf.tail() instanceof Clause.Tail.Verb verb
        ? Optional.of(verb.operand())
        : Optional.empty();
  }

  /** The readings of an operand as a value. */
  Candidates<Value> values(Operand operand, Scope scope, @Nullable ValueType wanted) {
    return operand.accept(
        new Operand.Visitor<>() {
          @Override
          public Candidates<Value> visitPhrase(Phrase phrase) {
            return valuesOf(reader(phrase), scope, wanted);
          }

          @Override
          public Candidates<Value> visitChain(Operand.Chain chain) {
            return chain(chain, scope);
          }

          @Override
          public Candidates<Value> visitMinus(Operand.Minus minus) {
            return Candidates.bad(
                Problems.error(
                    DiagnosticCode.BAD_ARITHMETIC,
                    minus.span(),
                    "A minus sign before a word cannot be understood.",
                    "Put it before a number (-38 degC), or between two values."));
          }
        });
  }

  static Candidates<Value> valuesOf(PhraseReader reader, Scope scope, @Nullable ValueType wanted) {
    List<Reading<Value>> whole =
        reader.values(0, scope, wanted).stream().filter(r -> r.end() == reader.size()).toList();
    return Candidates.of(whole, reader::failure);
  }

  private Candidates<Value> chain(Operand.Chain chain, Scope scope) {
    if (chain.operands().size() > LONGEST_CHAIN) {
      return Candidates.bad(
          Problems.error(
              DiagnosticCode.TOO_DEEP,
              chain.span(),
              "This sum has more than " + LONGEST_CHAIN + " parts.",
              "Give parts of it a name with \"let\", or take a total."));
    }
    List<Reading<Value>> sums = List.of();
    List<Diagnostic> problems = new ArrayList<>();
    for (int i = 0; i < chain.operands().size(); i++) {
      Candidates<Value> next = values(chain.operands().get(i), scope, null);
      problems.addAll(next.problems());
      if (i == 0) {
        sums = next.readings();
      } else if (problems.isEmpty()) {
        Span span = chain.operands().get(0).span().to(chain.operands().get(i).span());
        Candidates<Value> joined =
            joined(sums, chain.operators().get(i - 1), next.readings(), span);
        problems.addAll(joined.problems());
        sums = joined.readings();
      }
    }
    return problems.isEmpty() ? new Candidates<>(sums, List.of()) : Candidates.bad(problems);
  }

  private static Candidates<Value> joined(
      List<Reading<Value>> lefts,
      Operand.Operator operator,
      List<Reading<Value>> rights,
      Span span) {
    List<Reading<Value>> all = new ArrayList<>();
    for (Reading<Value> left : lefts) {
      for (Reading<Value> right : rights) {
        if (!left.openings().isEmpty() || !right.openings().isEmpty()) {
          return Candidates.bad(noOpenings(span));
        }
        Result<Value> value =
            Typing.arithmetic(
                Value.Arithmetic.Operator.valueOf(operator.name()), left.get(), right.get(), span);
        all.add(new Reading<>(0, value, List.of(), left.scope()));
        if (all.size() >= MOST_READINGS) {
          break;
        }
      }
    }
    return Candidates.of(
        all,
        () -> {
          throw new IllegalStateException("no readings to join");
        });
  }

  private static Diagnostic noOpenings(Span span) {
    return Problems.error(
        DiagnosticCode.MISPLACED_DETERMINER,
        span,
        "In a sum, only one certain element can be named.",
        "Write \"it\" or \"the ...\" here, or begin the sentence with \"for each\".");
  }

  /** The openings of both, in order. */
  static List<Opening> join(List<Opening> first, List<Opening> second) {
    List<Opening> all = new ArrayList<>(first);
    all.addAll(second);
    return all;
  }
}
