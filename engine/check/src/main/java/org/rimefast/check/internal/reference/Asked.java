package org.rimefast.check.internal.reference;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.rimefast.check.Arguments;
import org.rimefast.check.HandleList;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.internal.Sparing;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Variable;
import org.rimefast.lang.vocabulary.Noun;

/**
 * The elements that are asked for a quantifier or an aggregate.
 *
 * @param handles in increasing order; do not change it
 * @param spared how many of the kind are not asked, since an index rules them out
 */
record Asked(int[] handles, int spared) {
  /**
   * All that a variable may stand for, or those that an index does not rule out.
   *
   * @param spare the relation with the index; null if all are asked
   */
  static Asked of(Scope scope, Variable variable, Sparing.@Nullable Spare spare) {
    PlanFacts facts = scope.facts();
    Noun noun = variable.noun();
    int[] all = facts.members(noun);
    int[] few = spare == null || !scope.spares() ? null : few(scope, spare);
    if (few == null) {
      return new Asked(all, 0);
    }
    int[] asked =
        Arrays.stream(few)
            .filter(handle -> facts.isMember(noun, handle))
            .sorted()
            .distinct()
            .toArray();
    return new Asked(asked, all.length - asked.length);
  }

  /** What the index names; null if the plan does not say what it is asked with. */
  private static int @Nullable [] few(Scope scope, Sparing.Spare spare) {
    Condition.Holds holds = spare.holds();
    Reference reference =
        spare.subjects() ? (Reference) holds.arguments().get(spare.slot()) : holds.subject();
    Integer given = ElementFinder.find(reference, scope).value().orElse(null);
    if (given == null) {
      return null;
    }
    Arguments arguments =
        new ValueFinder(scope)
            .argumentsBut(spare.slot(), given, holds.arguments())
            .value()
            .orElse(null);
    if (arguments == null) {
      return null;
    }
    HandleList found = new HandleList();
    spare.function().find(scope.facts(), given, arguments, found);
    return found.toArray();
  }
}
