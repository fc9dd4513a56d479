package org.rimefast.lang.internal.paraphrase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimefast.lang.internal.resolve.Scope;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Condition.Quantified.Quantifier;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.vocabulary.Relation;

/** Writes what stands after {@code must}, all of it said of one element. */
final class PredicateWriter {
  private final ConditionWriter conditions;
  private final Reference subject;
  private final Scope scope;

  private final boolean plural;

  /**
   * A writer for one element.
   *
   * @param plural true if its noun stands in the plural
   */
  PredicateWriter(ConditionWriter conditions, Reference subject, Scope scope, boolean plural) {
    this.conditions = conditions;
    this.subject = subject;
    this.plural = plural;
    this.scope = scope;
  }

  /** {@code must ...} or {@code must not ...}; nothing if it is not all said of the element. */
  Optional<Said> must(Condition requirement) {
    if (requirement instanceof Condition.Not not) {
      Optional<Said> part = denied(not.part());
      return part.map(said -> new Said("must not " + said.words(), said.obstacle()));
    }
    return write(requirement)
        .map(
            said ->
                new Said(
                    // A "not" of the first part alone is no "must not".
                    said.words().startsWith("not ")
                        ? "must (" + said.words() + ")"
                        : "must " + said.words(),
                    said.obstacle()));
  }

  private Optional<Said> write(Condition condition) {
    if (condition instanceof Condition.And and) {
      return joined(and.parts(), " and ");
    }
    if (condition instanceof Condition.Or or) {
      return joined(or.parts(), " or ");
    }
    if (condition instanceof Condition.Not not) {
      return denied(not.part()).map(said -> new Said("not " + said.words(), said.obstacle()));
    }
    return leaf(condition);
  }

  /** What stands behind a {@code not}, in parentheses unless it is plain. */
  private Optional<Said> denied(Condition condition) {
    Chain chain = Chain.of(condition);
    boolean plain =
        chain.isClause()
            && !chain.not()
            && chain.outer().stream().allMatch(q -> q.quantifier() == Quantifier.SOME);
    return write(condition)
        .map(said -> plain ? said : new Said("(" + said.words() + ")", said.obstacle()));
  }

  private Optional<Said> joined(List<Condition> parts, String word) {
    List<String> words = new ArrayList<>();
    Obstacle obstacle = null;
    for (Condition part : parts) {
      Optional<Said> said = write(part);
      if (said.isEmpty()) {
        return Optional.empty();
      }
      boolean group = part instanceof Condition.And || part instanceof Condition.Or;
      words.add(group ? "(" + said.get().words() + ")" : said.get().words());
      obstacle = obstacle == null ? said.get().obstacle() : obstacle;
    }
    return Optional.of(new Said(String.join(word, words), obstacle));
  }

  private Optional<Said> leaf(Condition condition) {
    Chain chain = Chain.of(condition);
    if (!chain.isClause() || chain.not()) {
      return Optional.empty();
    }
    ClauseWriter clause = new ClauseWriter(conditions, scope, chain);
    clause.bare(subject);
    String words = "";
    if (chain.core() instanceof Condition.Compare compare) {
      words = "have " + Comparing.afterHave(clause, compare);
    } else if (chain.core() instanceof Condition.IsA isA && isA.subject().equals(subject)) {
      words = "be " + ConditionWriter.kind(isA, plural);
    } else if (chain.core() instanceof Condition.Same same && same.left().equals(subject)) {
      words = "be " + clause.spokenOf(same.right());
    } else if (chain.core() instanceof Condition.Holds holds && holds.subject().equals(subject)) {
      Relation relation = holds.relation();
      String filled = clause.filled(relation.pattern(), relation.slots(), holds.arguments());
      words = relation.form() == Relation.Form.BE ? "be " + filled : filled;
    }
    return words.isEmpty() || clause.hasFailed()
        ? Optional.empty()
        : Optional.of(clause.said(words));
  }
}
