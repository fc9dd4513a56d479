package org.rimefast.check.internal.strength;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Condition.Quantified.Quantifier;
import org.rimefast.lang.rule.Question;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Term;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.source.Span;

/** Makes every rule that differs from a rule by one of the mistakes that authors make. */
public final class Mutations implements Condition.Visitor<List<Changed<Condition>>> {
  private static final Mutations INSTANCE = new Mutations();

  private Mutations() {}

  /** The rules that one small change makes of a rule, in the order of its text. */
  public static List<Changed<Rule>> of(Rule rule) {
    List<Changed<Rule>> all = new ArrayList<>();
    optional(
        rule.where(), where -> rule.withConditions(where, rule.onlyIf(), rule.requirement()), all);
    optional(
        rule.onlyIf(), only -> rule.withConditions(rule.where(), only, rule.requirement()), all);
    for (Changed<Condition> changed : of(rule.requirement())) {
      all.add(changed.in(must -> rule.withConditions(rule.where(), rule.onlyIf(), must)));
    }
    return all;
  }

  static List<Changed<Condition>> of(Condition condition) {
    return condition.accept(INSTANCE);
  }

  /** Changes of a condition that may be left out; leaving it out is one of them. */
  static <T> void optional(
      Optional<Condition> where, Function<Optional<Condition>, T> enclosing, List<Changed<T>> all) {
    if (where.isEmpty()) {
      return;
    }
    Condition condition = where.get();
    all.add(
        new Changed<>(
            enclosing.apply(Optional.empty()),
            "who is meant from all there are",
            condition.span()));
    for (Changed<Condition> changed : of(condition)) {
      all.add(changed.in(c -> enclosing.apply(Optional.of(c))));
    }
  }

  @Override
  public List<Changed<Condition>> visitAnd(Condition.And and) {
    return joined(and.parts(), and.span(), Condition.And::new, Condition.Or::new, "and", "or");
  }

  @Override
  public List<Changed<Condition>> visitOr(Condition.Or or) {
    return joined(or.parts(), or.span(), Condition.Or::new, Condition.And::new, "or", "and");
  }

  private static List<Changed<Condition>> joined(
      List<Condition> parts,
      Span span,
      BiFunction<List<Condition>, Span, Condition> same,
      BiFunction<List<Condition>, Span, Condition> other,
      String word,
      String otherWord) {
    List<Changed<Condition>> all = new ArrayList<>();
    all.add(new Changed<>(other.apply(parts, span), apart(word, otherWord), span));
    for (int i = 0; i < parts.size(); i++) {
      List<Condition> rest = new ArrayList<>(parts);
      Condition dropped = rest.remove(i);
      Condition without = rest.size() == 1 ? rest.get(0) : same.apply(rest, span);
      all.add(new Changed<>(without, "the sentence from the same without this", dropped.span()));
      int place = i;
      for (Changed<Condition> changed : of(parts.get(i))) {
        all.add(changed.in(part -> same.apply(replaced(parts, place, part), span)));
      }
    }
    return all;
  }

  static <T> List<T> replaced(List<T> parts, int place, T part) {
    List<T> copy = new ArrayList<>(parts);
    copy.set(place, part);
    return copy;
  }

  @Override
  public List<Changed<Condition>> visitNot(Condition.Not not) {
    List<Changed<Condition>> all = new ArrayList<>();
    all.add(new Changed<>(not.part(), "\"not\" from its absence", not.span()));
    for (Changed<Condition> changed : of(not.part())) {
      // The part without a "not" of its own is what is left when this one is taken away.
      if (!(changed.node() instanceof Condition.Not)) {
        all.add(changed.in(part -> new Condition.Not(part, not.span())));
      }
    }
    return all;
  }

  @Override
  public List<Changed<Condition>> visitCompare(Condition.Compare compare) {
    List<Changed<Condition>> all = new ArrayList<>();
    for (Comparison other : others(compare.comparison())) {
      all.add(
          new Changed<>(
              new Condition.Compare(compare.left(), other, compare.right(), compare.span()),
              apart(words(compare.comparison()), words(other)),
              compare.span()));
    }
    for (Changed<Value> changed : ValueMutations.of(compare.left())) {
      all.add(
          changed.in(
              left ->
                  new Condition.Compare(
                      left, compare.comparison(), compare.right(), compare.span())));
    }
    for (Changed<Value> changed : ValueMutations.of(compare.right())) {
      all.add(
          changed.in(
              right ->
                  new Condition.Compare(
                      compare.left(), compare.comparison(), right, compare.span())));
    }
    return all;
  }

  /** The comparison that differs only at the limit, and the one that looks the other way. */
  private static List<Comparison> others(Comparison comparison) {
    return switch (comparison) {
      case AT_LEAST -> List.of(Comparison.MORE_THAN, Comparison.AT_MOST);
      case MORE_THAN -> List.of(Comparison.AT_LEAST, Comparison.LESS_THAN);
      case AT_MOST -> List.of(Comparison.LESS_THAN, Comparison.AT_LEAST);
      case LESS_THAN -> List.of(Comparison.AT_MOST, Comparison.MORE_THAN);
      case EQUAL -> List.of(Comparison.NOT_EQUAL);
      case NOT_EQUAL -> List.of(Comparison.EQUAL);
    };
  }

  private static String words(Comparison comparison) {
    return switch (comparison) {
      case AT_LEAST -> "at least";
      case MORE_THAN -> "more than";
      case AT_MOST -> "at most";
      case LESS_THAN -> "less than";
      case EQUAL -> "is";
      case NOT_EQUAL -> "is not";
    };
  }

  static String apart(String one, String other) {
    return "\"" + one + "\" from \"" + other + "\"";
  }

  @Override
  public List<Changed<Condition>> visitHolds(Condition.Holds holds) {
    List<Changed<Condition>> all = new ArrayList<>(turned(holds));
    ValueMutations.arguments(
        holds.arguments(),
        arguments ->
            new Condition.Holds(holds.relation(), holds.subject(), arguments, holds.span()),
        all);
    return all;
  }

  private static List<Changed<Condition>> turned(Condition condition) {
    return List.of(
        new Changed<>(
            new Condition.Not(condition, condition.span()),
            "the sentence from the same with \"not\"",
            condition.span()));
  }

  /** What a term says is part of what the rule says. */
  @Override
  public List<Changed<Condition>> visitIsA(Condition.IsA isA) {
    List<Changed<Condition>> all = new ArrayList<>(turned(isA));
    if (isA.term().isPresent()) {
      for (Changed<Condition> changed : of(isA.term().get().condition())) {
        all.add(changed.in(condition -> with(isA, isA.term().get(), condition)));
      }
    }
    return all;
  }

  private static Condition with(Condition.IsA isA, Term term, Condition condition) {
    Term other =
        new Term(
            term.singular(),
            term.plural(),
            term.element(),
            condition,
            term.because(),
            term.source(),
            term.span());
    return new Condition.IsA(isA.subject(), isA.noun(), Optional.of(other), isA.span());
  }

  @Override
  public List<Changed<Condition>> visitAnswered(Condition.Answered answered) {
    Question question = answered.question();
    List<Changed<Condition>> all = new ArrayList<>();
    Question turned =
        new Question(question.inspect(), question.ask(), !question.answer(), question.limit());
    all.add(new Changed<>(with(answered, turned), apart("yes", "no"), answered.span()));
    if (question.limit().isPresent()) {
      Question.Limit limit = question.limit().get();
      for (Comparison other : others(limit.comparison())) {
        all.add(
            new Changed<>(
                with(answered, question.withLimit(new Question.Limit(other, limit.value()))),
                apart(words(limit.comparison()), words(other)),
                limit.value().span()));
      }
      for (Changed<Value> changed : ValueMutations.of(limit.value())) {
        all.add(
            changed.in(
                value ->
                    with(
                        answered,
                        question.withLimit(new Question.Limit(limit.comparison(), value)))));
      }
    }
    return all;
  }

  private static Condition with(Condition.Answered answered, Question question) {
    return new Condition.Answered(answered.subject(), question, answered.span());
  }

  @Override
  public List<Changed<Condition>> visitSame(Condition.Same same) {
    return turned(same);
  }

  @Override
  public List<Changed<Condition>> visitQuantified(Condition.Quantified q) {
    List<Changed<Condition>> all = new ArrayList<>();
    for (Condition.Quantified other : otherQuantifiers(q)) {
      all.add(new Changed<>(other, apart(words(q), words(other)), q.span()));
    }
    optional(
        q.where(), where -> with(q, q.quantifier(), q.number(), q.others(), where, q.body()), all);
    for (Changed<Condition> changed : of(q.body())) {
      all.add(changed.in(b -> with(q, q.quantifier(), q.number(), q.others(), q.where(), b)));
    }
    return all;
  }

  private static Condition.Quantified with(
      Condition.Quantified q,
      Quantifier quantifier,
      int number,
      boolean others,
      Optional<Condition> where,
      Condition body) {
    return new Condition.Quantified(
        quantifier, number, q.variable(), others, where, body, q.span());
  }

  private static List<Condition.Quantified> otherQuantifiers(Condition.Quantified q) {
    List<Condition.Quantified> all = new ArrayList<>();
    int n = q.number();
    switch (q.quantifier()) {
      case EACH -> all.add(quantifier(q, Quantifier.SOME, 0));
      case SOME -> {
        all.add(quantifier(q, Quantifier.EACH, 0));
        all.add(quantifier(q, Quantifier.NO, 0));
      }
      case NO -> all.add(quantifier(q, Quantifier.SOME, 0));
      case AT_LEAST -> {
        all.add(quantifier(q, Quantifier.AT_LEAST, n + 1));
        if (n > 0) {
          all.add(quantifier(q, Quantifier.AT_LEAST, n - 1));
        }
        all.add(quantifier(q, Quantifier.EXACTLY, n));
      }
      case AT_MOST -> {
        all.add(quantifier(q, Quantifier.AT_MOST, n + 1));
        if (n > 0) {
          all.add(quantifier(q, Quantifier.AT_MOST, n - 1));
        }
        all.add(quantifier(q, Quantifier.EXACTLY, n));
      }
      case EXACTLY -> {
        all.add(quantifier(q, Quantifier.AT_LEAST, n));
        all.add(quantifier(q, Quantifier.AT_MOST, n));
      }
      case ALL_BUT -> {
        all.add(quantifier(q, Quantifier.ALL_BUT, n + 1));
        all.add(
            n > 0 ? quantifier(q, Quantifier.ALL_BUT, n - 1) : quantifier(q, Quantifier.EACH, 0));
      }
    }
    if (q.others()) {
      all.add(with(q, q.quantifier(), n, false, q.where(), q.body()));
    }
    return all;
  }

  private static Condition.Quantified quantifier(
      Condition.Quantified q, Quantifier quantifier, int number) {
    return with(q, quantifier, number, q.others(), q.where(), q.body());
  }

  private static String words(Condition.Quantified q) {
    String many =
        switch (q.quantifier()) {
          case EACH -> "each";
          case SOME -> "some";
          case NO -> "no";
          case AT_LEAST -> "at least " + q.number();
          case AT_MOST -> "at most " + q.number();
          case EXACTLY -> "exactly " + q.number();
          case ALL_BUT -> "all but " + q.number();
        };
    return q.others() ? many + " other" : many;
  }
}
