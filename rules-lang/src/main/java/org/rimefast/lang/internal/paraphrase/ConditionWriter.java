package org.rimefast.lang.internal.paraphrase;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.resolve.Scope;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Condition.Quantified;
import org.rimefast.lang.rule.Condition.Quantified.Quantifier;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Term;
import org.rimefast.lang.vocabulary.Relation;

/** Writes conditions, as they stand after {@code where} or {@code if}. */
final class ConditionWriter {
  // A quantified noun is tried in several forms, each of which needs the words of its condition;
  // without these, nested conditions would cost two to the power of their depth.
  private final IdentityHashMap<Condition, Map<Scope, Said>> known = new IdentityHashMap<>();

  private final Style style;

  ConditionWriter(Style style) {
    this.style = style;
  }

  Style style() {
    return style;
  }

  Said write(Condition condition, Scope scope) {
    Map<Scope, Said> here = known.computeIfAbsent(condition, c -> new HashMap<>());
    Said said = here.get(scope);
    if (said == null) {
      said = written(condition, scope);
      here.put(scope, said);
    }
    return said;
  }

  private Said written(Condition condition, Scope scope) {
    if (condition instanceof Condition.And and) {
      return joined(and.parts(), " and ", scope);
    }
    if (condition instanceof Condition.Or or) {
      return joined(or.parts(), " or ", scope);
    }
    Optional<Said> clause = clause(condition, scope);
    if (clause.isPresent()) {
      return clause.get();
    }
    if (condition instanceof Condition.Not not) {
      Said part = write(not.part(), scope);
      boolean enclosed = not.part() instanceof Quantified && part.words().startsWith("(for ");
      return new Said(
          enclosed ? "not " + part.words() : "not (" + part.words() + ")", part.obstacle());
    }
    if (!(condition instanceof Quantified quantified)) {
      throw new IllegalStateException("no words for " + condition);
    }
    return canBeThere(quantified)
        ? there(quantified, scope, isPlural(quantified) ? "there are " : "there is ")
        : forMany(quantified, scope);
  }

  private static boolean isPlural(Quantified quantified) {
    return KindWords.of(quantified.variable(), Optional.of(quantified.body())).isPlural(quantified);
  }

  private Said joined(List<Condition> parts, String word, Scope scope) {
    List<String> said = new ArrayList<>();
    Obstacle obstacle = null;
    for (Condition part : parts) {
      Said words = write(part, scope);
      boolean group = part instanceof Condition.And || part instanceof Condition.Or;
      said.add(group ? "(" + words.words() + ")" : words.words());
      obstacle = obstacle == null ? words.obstacle() : obstacle;
    }
    return new Said(String.join(word, said), obstacle);
  }

  /** True if {@code there is a ...} can say it. */
  static boolean canBeThere(Quantified quantified) {
    return quantified.where().isEmpty()
        && quantified.quantifier() != Quantifier.EACH
        && quantified.quantifier() != Quantifier.ALL_BUT;
  }

  /** {@code there is a bracket (where ...)}. */
  Said there(Quantified quantified, Scope scope, String before) {
    Quantified named =
        new Quantified(
            quantified.quantifier(),
            quantified.number(),
            quantified.variable(),
            quantified.others(),
            Optional.of(quantified.body()),
            quantified.body(),
            quantified.span());
    return named(named, scope, before);
  }

  private Said named(Quantified quantified, Scope scope, String before) {
    ClauseWriter clause = new ClauseWriter(this, scope, quantified);
    return clause.said(before + clause.element(new Reference.Bound(quantified.variable())));
  }

  private Said forMany(Quantified quantified, Scope scope) {
    Said named = named(quantified, scope, "for ");
    KindWords kind = KindWords.of(quantified.variable(), quantified.where());
    Scope inside = scope.inside(quantified.variable(), kind.singular(), ClauseWriter.NOWHERE);
    Said body = write(quantified.body(), inside);
    return new Said(
        "(" + named.words() + ", " + body.words() + ")",
        named.obstacle() == null ? body.obstacle() : named.obstacle());
  }

  /** One plain clause, if the condition can be said so. */
  private Optional<Said> clause(Condition condition, Scope scope) {
    Chain chain = Chain.of(condition);
    if (!chain.isClause() || (chain.not() && !chain.isPlainlyDenied())) {
      return Optional.empty();
    }
    ClauseWriter clause = new ClauseWriter(this, scope, chain);
    String words = words(clause, chain);
    return clause.hasFailed() ? Optional.empty() : Optional.of(clause.said(words));
  }

  private static String words(ClauseWriter clause, Chain chain) {
    if (chain.core() instanceof Condition.Compare compare) {
      return compared(clause, chain, compare);
    }
    Reference subject = subject(chain.core());
    String who = clause.element(subject);
    boolean plural = clause.isPlural();
    if (chain.not()) {
      clause.deny();
    }
    String not = chain.not() ? "not " : "";
    if (chain.core() instanceof Condition.IsA isA) {
      return who + (plural ? " are " : " is ") + not + kind(isA, plural);
    }
    if (chain.core() instanceof Condition.Same same) {
      return who + (plural ? " are " : " is ") + not + clause.spokenOf(same.right());
    }
    Condition.Holds holds = (Condition.Holds) chain.core();
    clause.bare(subject);
    Relation relation = holds.relation();
    boolean verb = relation.form() == Relation.Form.VERB;
    String helper = verb ? plural ? "do not " : "does not " : plural ? "are " : "is ";
    String pattern = verb && !chain.not() && !plural ? relation.third() : relation.pattern();
    String filled = clause.filled(pattern, relation.slots(), holds.arguments());
    return verb
        ? who + " " + (chain.not() ? helper : "") + filled
        : who + " " + helper + not + filled;
  }

  private static Reference subject(Condition core) {
    if (core instanceof Condition.Holds holds) {
      return holds.subject();
    }
    return core instanceof Condition.Same same ? same.left() : ((Condition.IsA) core).subject();
  }

  /** {@code a stud}, or {@code studs}. */
  static String kind(Condition.IsA isA, boolean plural) {
    return plural ? plural(isA) : English.withArticle(isA.singular());
  }

  private static String plural(Condition.IsA isA) {
    return isA.term().map(Term::plural).orElseGet(() -> isA.noun().plural());
  }

  private static String compared(ClauseWriter clause, Chain chain, Condition.Compare compare) {
    String left = clause.values().first(compare.left(), false);
    if (chain.not()) {
      clause.deny();
    }
    if (chain.not() && !Comparing.isOrder(compare.comparison())) {
      // "is not" with a value would be a comparison of its own.
      clause.fail();
    }
    String right = clause.values().limit(compare.right(), false);
    boolean unequal = compare.comparison() == Comparison.NOT_EQUAL;
    if (unequal && !chain.outer().isEmpty()) {
      // "is not" would deny the quantified nouns too.
      return left + " != " + right;
    }
    String is = chain.not() || unequal ? " is not " : " is ";
    return left + is + Comparing.afterIs(compare.comparison()) + right;
  }
}
