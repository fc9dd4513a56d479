package org.rimefast.check.internal.reference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.rimefast.check.Evidence;
import org.rimefast.check.Truth;
import org.rimefast.check.Word;
import org.rimefast.check.internal.Sparing;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Condition.Quantified.Quantifier;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Value;

/** Works out how many elements meet a condition, by asking one after the other. */
final class QuantifiedExplainer {
  private static final int SHOWN = 3;

  private final Scope scope;
  private final boolean wanted;
  private final Describer describer;

  QuantifiedExplainer(Scope scope, boolean wanted) {
    this.scope = scope;
    this.wanted = wanted;
    describer = new Describer(scope);
  }

  Evidence explain(Condition.Quantified quantified) {
    List<Evidence> meeting = new ArrayList<>();
    List<Evidence> failing = new ArrayList<>();
    List<Evidence> unsure = new ArrayList<>();
    boolean few =
        quantified.quantifier() == Quantifier.NO || quantified.quantifier() == Quantifier.AT_MOST;
    boolean bodyWanted = wanted != few;
    boolean many = false;
    Asked asked = asked(quantified);
    List<Scope> unreached = new ArrayList<>();
    for (int handle : asked.handles()) {
      if (quantified.others() && handle == scope.subject()) {
        continue;
      }
      Scope inner = scope.with(quantified.variable(), handle);
      Evidence counts =
          quantified
              .where()
              .map(where -> new ConditionExplainer(inner, true).explain(where))
              .orElse(Reasons.ALWAYS);
      if (counts.truth() == Truth.FALSE) {
        continue;
      }
      if (isUnreached(quantified, inner)) {
        unreached.add(inner);
        continue;
      }
      Evidence body = new ConditionExplainer(inner, bodyWanted).explain(quantified.body());
      sort(quantified.quantifier(), counts, body, meeting, failing, unsure);
      if (scope.facts().standsForMany(handle)
          && body.truth() != Truth.of(countsExceptions(quantified.quantifier()))) {
        many = true;
        unsure.add(Reasons.unknown("how many there are", Reasons.howMany(scope.facts(), handle)));
      }
    }
    boolean told = meeting.isEmpty() && unsure.isEmpty();
    for (Scope inner : unreached) {
      failing.add(
          told
              ? new ConditionExplainer(inner, bodyWanted).explain(quantified.body())
              : Reasons.plain("", Truth.FALSE, Outcome.nothing()));
    }
    int open = many ? quantified.number() + 1 : 0;
    Truth result = decide(quantified, meeting.size(), failing.size(), unsure.size() + open);
    int all = meeting.size() + failing.size() + unsure.size() + spared(quantified, asked);
    return evidence(quantified, result, meeting, failing, unsure, all);
  }

  /**
   * True for an element to which no chain leads, by the index. Why none does is worth telling only
   * where none leads to any of them.
   */
  private boolean isUnreached(Condition.Quantified quantified, Scope inner) {
    if (countsExceptions(quantified.quantifier())
        || !(quantified.body() instanceof Condition.Holds holds)
        || !(scope.words().relation(holds.relation()) instanceof Word.ChainWord chain)) {
      return false;
    }
    Optional<Integer> from = ElementFinder.find(holds.subject(), inner).value();
    Optional<Integer> to = ElementFinder.find((Reference) holds.arguments().get(0), inner).value();
    return from.isPresent()
        && to.isPresent()
        && ChainExplainer.indexed(scope, chain, holds, from.get(), to.get())
            .filter(truth -> truth == Truth.FALSE)
            .isPresent();
  }

  /**
   * Whom to ask. Where the relation that spares the others stands in the body, those count as
   * elements that do not meet it, so that is only done where every element is looked at.
   */
  private Asked asked(Condition.Quantified quantified) {
    Optional<Sparing.Spare> spare = Sparing.ofWhere(scope.words(), quantified);
    if (spare.isEmpty() && quantified.where().map(w -> isOfItsOwn(w, quantified)).orElse(true)) {
      spare = Sparing.ofBody(scope.words(), quantified);
    }
    return Asked.of(scope, quantified.variable(), spare.orElse(null));
  }

  /** True for a condition that speaks of nothing but the element that it is asked of. */
  private static boolean isOfItsOwn(Condition where, Condition.Quantified quantified) {
    int index = quantified.variable().index();
    if (where instanceof Condition.And and) {
      return and.parts().stream().allMatch(part -> isOfItsOwn(part, quantified));
    }
    if (where instanceof Condition.Or or) {
      return or.parts().stream().allMatch(part -> isOfItsOwn(part, quantified));
    }
    if (where instanceof Condition.Not not) {
      return isOfItsOwn(not.part(), quantified);
    }
    if (where instanceof Condition.Compare compare) {
      return isItsOwn(compare.left(), index) && isFixed(compare.right());
    }
    if (where instanceof Condition.Holds holds) {
      return isOwn(holds.subject(), index)
          && holds.arguments().stream().allMatch(QuantifiedExplainer::isFixed);
    }
    return where instanceof Condition.IsA isA && isOwn(isA.subject(), index);
  }

  private static boolean isOwn(Reference reference, int index) {
    return reference instanceof Reference.Bound bound && bound.variable().index() == index;
  }

  private static boolean isItsOwn(Value value, int index) {
    return value instanceof Value.Of of
        && isOwn(of.owner(), index)
        && of.arguments().stream().allMatch(QuantifiedExplainer::isFixed);
  }

  private static boolean isFixed(Object value) {
    return value instanceof Value.Literal
        || value instanceof Value.Word
        || value instanceof Value.Named
        || value instanceof Value.Text;
  }

  /** How many that were not asked are looked at and do not meet the condition. */
  private int spared(Condition.Quantified quantified, Asked asked) {
    if (asked.spared() == 0
        || (quantified.where().isPresent()
            && Sparing.ofWhere(scope.words(), quantified).isPresent())) {
      return 0;
    }
    Memo.Counted memo =
        quantified.where().map(where -> scope.memo().counts(where, quantified, scope)).orElse(null);
    boolean[] counts = memo == null ? null : memo.elements();
    int subject =
        quantified.others()
                && scope.facts().isMember(quantified.variable().noun(), scope.subject())
                && Arrays.binarySearch(asked.handles(), scope.subject()) < 0
                && (counts == null || counts[scope.subject()])
            ? 1
            : 0;
    if (memo == null || counts == null) {
      return asked.spared() - subject;
    }
    int all = memo.all();
    for (int handle : asked.handles()) {
      all -= counts[handle] ? 1 : 0;
    }
    return all - subject;
  }

  private static void sort(
      Quantifier quantifier,
      Evidence counts,
      Evidence body,
      List<Evidence> meeting,
      List<Evidence> failing,
      List<Evidence> unsure) {
    boolean settled = body.truth() == Truth.of(countsExceptions(quantifier));
    if (counts.truth() == Truth.UNKNOWN && !settled) {
      unsure.add(
          body.truth() == Truth.UNKNOWN
              ? Reasons.of(Truth.UNKNOWN, List.of(counts, body), true)
              : counts);
    } else if (body.truth() == Truth.UNKNOWN) {
      unsure.add(body);
    } else if (body.truth() == Truth.TRUE) {
      meeting.add(body);
    } else {
      failing.add(body);
    }
  }

  /** True if those count that do not meet the condition. */
  private static boolean countsExceptions(Quantifier quantifier) {
    return quantifier == Quantifier.EACH || quantifier == Quantifier.ALL_BUT;
  }

  private static Truth decide(
      Condition.Quantified quantified, int meeting, int failing, int unsure) {
    int n = quantified.number();
    return switch (quantified.quantifier()) {
      case EACH -> none(failing, unsure);
      case ALL_BUT -> known(failing + unsure <= n, failing > n);
      case NO -> none(meeting, unsure);
      case SOME -> none(meeting, unsure).not();
      case AT_LEAST -> known(meeting >= n, meeting + unsure < n);
      case AT_MOST -> known(meeting + unsure <= n, meeting > n);
      case EXACTLY -> known(meeting == n && unsure == 0, meeting > n || meeting + unsure < n);
    };
  }

  private static Truth none(int certain, int unsure) {
    return known(certain == 0 && unsure == 0, certain > 0);
  }

  private static Truth known(boolean certainly, boolean certainlyNot) {
    return certainly ? Truth.TRUE : certainlyNot ? Truth.FALSE : Truth.UNKNOWN;
  }

  private Evidence evidence(
      Condition.Quantified quantified,
      Truth result,
      List<Evidence> meeting,
      List<Evidence> failing,
      List<Evidence> unsure,
      int all) {
    boolean each = countsExceptions(quantified.quantifier());
    List<Evidence> deciding =
        result == Truth.UNKNOWN ? unsure : each && result == Truth.FALSE ? failing : meeting;
    return new Evidence(
        statement(quantified, result, deciding, meeting.size(), all),
        result,
        Optional.empty(),
        List.of(),
        List.of(),
        result == Truth.UNKNOWN ? deciding : shown(quantified, deciding, failing));
  }

  /** Where no chain leads to any of them, what blocks the chains is worth telling. */
  private List<Evidence> shown(
      Condition.Quantified quantified, List<Evidence> deciding, List<Evidence> failing) {
    boolean chain =
        quantified.body() instanceof Condition.Holds holds
            && scope.words().relation(holds.relation()) instanceof Word.ChainWord;
    List<Evidence> telling = deciding.isEmpty() && chain ? failing : deciding;
    return telling.subList(0, Math.min(SHOWN, telling.size()));
  }

  private String statement(
      Condition.Quantified quantified,
      Truth result,
      List<Evidence> deciding,
      int meeting,
      int all) {
    if (all == 0) {
      return "there are no " + Describer.plural(quantified) + " to look at";
    }
    if (result == Truth.UNKNOWN && all == 1) {
      return deciding.get(0).statement();
    }
    if (result == Truth.UNKNOWN) {
      return describer.quantified(quantified, "whether", all)
          + " cannot be told for "
          + deciding.size()
          + " of them: "
          + Reasons.why(deciding);
    }
    boolean witnessed =
        switch (quantified.quantifier()) {
          case SOME -> result == Truth.TRUE;
          case NO, EACH -> result == Truth.FALSE;
          case AT_LEAST, AT_MOST, EXACTLY, ALL_BUT -> false;
        };
    return witnessed
        ? witnesses(deciding)
        : describer.quantified(
            quantified, meeting == 0 ? "none" : meeting == all ? "all" : "" + meeting, all);
  }

  /** What the first few that decided have to say. */
  private static String witnesses(List<Evidence> deciding) {
    String said =
        deciding.stream().limit(SHOWN).map(Evidence::statement).collect(Collectors.joining("; "));
    int more = deciding.size() - SHOWN;
    return more > 0 ? said + "; and " + more + " more" : said;
  }
}
