package org.rimefast.lang.internal.paraphrase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.message.TableText;
import org.rimefast.lang.internal.resolve.Scope;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Condition.Quantified;
import org.rimefast.lang.rule.Condition.Quantified.Quantifier;
import org.rimefast.lang.rule.Question;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Table;
import org.rimefast.lang.rule.Term;
import org.rimefast.lang.rule.Value;

/** Writes the sentence of a rule and the definition of a term. */
public final class SentenceWriter {
  private final ConditionWriter conditions;

  private SentenceWriter(Style style) {
    this.conditions = new ConditionWriter(style);
  }

  /** The sentence of a rule. */
  public static Said sentence(Rule rule, Style style) {
    return new SentenceWriter(style).written(rule);
  }

  /** {@code let wet room be a room where ...}. */
  public static Said definition(Term term, Style style) {
    Scope scope = Scope.of(term.noun(), term.singular(), ClauseWriter.NOWHERE);
    Said condition = new ConditionWriter(style).write(term.condition(), scope);
    String kind = English.withArticle(term.noun().singular());
    return new Said(
        "let " + term.singular() + " be " + kind + " where " + condition.words(),
        condition.obstacle());
  }

  /** {@code table foam cover needed of a box by its mount}, and a line for each row. */
  public static Said definition(Table table, Style style) {
    Scope scope = Scope.of(table.noun(), table.noun().singular(), ClauseWriter.NOWHERE);
    List<String> inputs = new ArrayList<>();
    Obstacle first = null;
    for (Value input : table.inputs()) {
      Condition alone = new Condition.Compare(input, Comparison.EQUAL, input, ClauseWriter.NOWHERE);
      ClauseWriter clause =
          new ClauseWriter(new ConditionWriter(style), scope, Chain.of(alone).alone());
      Said said = clause.said(clause.values().first(input, false));
      inputs.add(said.words());
      first = first == null ? said.obstacle() : first;
    }
    String head =
        "table "
            + table.name()
            + " of "
            + English.withArticle(table.noun().singular())
            + " by "
            + String.join(", ", inputs);
    return new Said(head + "\n" + String.join("\n", TableText.rows(table)), first);
  }

  private Said written(Rule rule) {
    KindWords kind = KindWords.of(rule.subject(), rule.where());
    Scope scope = Scope.of(rule.subject().noun(), kind.singular(), ClauseWriter.NOWHERE);
    Said where = kind.rest().map(rest -> conditions.write(rest, scope)).orElse(new Said("", null));
    String each =
        "each " + kind.singular() + (kind.rest().isEmpty() ? "" : " where " + where.words());
    if (rule.question().isPresent()) {
      return new Said("for " + each + " " + asked(rule.question().get()), where.obstacle());
    }
    Said must = requirement(rule.requirement(), scope);
    Said guard = rule.onlyIf().map(condition -> guard(condition, scope)).orElse(new Said("", null));
    // "for each box, ..." where another than the box is spoken of.
    boolean plain = must.words().startsWith("must ");
    String words = plain ? each + " " + must.words() : "for " + each + ", " + must.words();
    Obstacle first = where.obstacle() == null ? must.obstacle() : where.obstacle();
    return new Said(words + guard.words(), first == null ? guard.obstacle() : first);
  }

  private static String asked(Question question) {
    String limit =
        question
            .limit()
            .map(
                asked ->
                    " reading " + Comparing.afterIs(asked.comparison()) + number(asked.value()))
            .orElse("");
    return "ask \"" + question.ask() + "\" answer " + question.answerWord() + limit;
  }

  private static String number(Value value) {
    return value instanceof Value.Named named
        ? named.constant().name()
        : ((Value.Literal) value).quantity().text();
  }

  private Said guard(Condition condition, Scope scope) {
    if (condition instanceof Condition.Not not) {
      Said part = conditions.write(not.part(), scope);
      return new Said(" unless " + part.words(), part.obstacle());
    }
    Said said = conditions.write(condition, scope);
    return new Said(" if " + said.words(), said.obstacle());
  }

  private Said requirement(Condition requirement, Scope scope) {
    Optional<Said> plain =
        new PredicateWriter(conditions, scope.it(), scope, false).must(requirement);
    Optional<Said> value = valueMustBe(requirement, scope);
    if (plain.isPresent() && (value.isEmpty() || readsBetterPlain(requirement, scope))) {
      return plain.get();
    }
    return value
        .or(() -> otherMust(requirement, scope))
        .or(() -> thereMustBe(requirement, scope))
        .orElseGet(
            () -> {
              Said condition = conditions.write(requirement, scope);
              String words = condition.words();
              boolean enclosed = requirement instanceof Quantified && words.startsWith("(for ");
              return new Said(
                  (enclosed ? words : "(" + words + ")") + " must hold", condition.obstacle());
            });
  }

  /** {@code must have clearance of at least 2 in}: a number of the element itself. */
  private static boolean readsBetterPlain(Condition requirement, Scope scope) {
    return requirement instanceof Condition.Compare compare
        && Comparing.isOrder(compare.comparison())
        && compare.left() instanceof Value.Of of
        && of.owner().equals(scope.it());
  }

  /** {@code its foam kind must be closed-cell}. */
  private Optional<Said> valueMustBe(Condition requirement, Scope scope) {
    Chain chain = Chain.of(requirement);
    if (!(chain.core() instanceof Condition.Compare compare)
        || compare.comparison() == Comparison.NOT_EQUAL
        || (chain.not() && !chain.isPlainlyDenied())) {
      return Optional.empty();
    }
    ClauseWriter clause = new ClauseWriter(conditions, scope, chain);
    String left = clause.values().first(compare.left(), false);
    if (chain.not()) {
      clause.deny();
    }
    String words =
        left
            + (chain.not() ? " must not be " : " must be ")
            + Comparing.afterIs(compare.comparison())
            + clause.values().limit(compare.right(), false);
    return clause.hasFailed() ? Optional.empty() : Optional.of(clause.said(words));
  }

  /** {@code some bracket must hold it}, {@code its room must be wet}. */
  private Optional<Said> otherMust(Condition requirement, Scope scope) {
    if (requirement instanceof Quantified quantified) {
      if (quantified.quantifier() == Quantifier.NO && quantified.body() instanceof Condition.Not) {
        return Optional.empty();
      }
      ClauseWriter clause = new ClauseWriter(conditions, scope, quantified);
      Reference subject = new Reference.Bound(quantified.variable());
      String who = clause.element(subject);
      return must(quantified.body(), clause, who, subject);
    }
    return linked(requirement)
        .flatMap(
            subject -> {
              ClauseWriter clause =
                  new ClauseWriter(conditions, scope, Chain.of(requirement).alone());
              String who = clause.reference(subject);
              return must(requirement, clause, who, subject);
            });
  }

  private Optional<Said> must(
      Condition condition, ClauseWriter clause, String who, Reference subject) {
    return new PredicateWriter(conditions, subject, clause.scope(), clause.isPlural())
        .must(condition)
        .map(
            said -> {
              clause.note(said);
              return clause.said(who + " " + said.words());
            });
  }

  /** What the first plain clause speaks of. */
  private static Optional<Reference> linked(Condition condition) {
    if (condition instanceof Condition.And and) {
      return linked(and.parts().get(0));
    }
    if (condition instanceof Condition.Or or) {
      return linked(or.parts().get(0));
    }
    if (condition instanceof Condition.Not not) {
      return linked(not.part());
    }
    if (condition instanceof Condition.Holds holds) {
      return Optional.of(holds.subject());
    }
    return condition instanceof Condition.IsA isA ? Optional.of(isA.subject()) : Optional.empty();
  }

  private Optional<Said> thereMustBe(Condition requirement, Scope scope) {
    return requirement instanceof Quantified quantified && ConditionWriter.canBeThere(quantified)
        ? Optional.of(conditions.there(quantified, scope, "there must be "))
        : Optional.empty();
  }
}
