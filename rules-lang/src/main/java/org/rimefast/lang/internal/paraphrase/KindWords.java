package org.rimefast.lang.internal.paraphrase;

import java.util.List;
import java.util.Optional;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Condition.Quantified;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Term;
import org.rimefast.lang.rule.Variable;

/**
 * How a kind of element is called, where its condition may begin with a term.
 *
 * @param singular one of them
 * @param plural several
 * @param rest what the name leaves unsaid of the condition
 */
record KindWords(String singular, String plural, Optional<Condition> rest) {

  static KindWords of(Variable variable, Optional<Condition> where) {
    Optional<Term> alone = where.flatMap(condition -> term(condition, variable));
    if (alone.isPresent()) {
      return new KindWords(alone.get().singular(), alone.get().plural(), Optional.empty());
    }
    if (where.orElse(null) instanceof Condition.And and && and.parts().size() == 2) {
      Optional<Term> first = term(and.parts().get(0), variable);
      if (first.isPresent()) {
        return new KindWords(
            first.get().singular(), first.get().plural(), Optional.of(and.parts().get(1)));
      }
    }
    return new KindWords(variable.noun().singular(), variable.noun().plural(), where);
  }

  private static Optional<Term> term(Condition condition, Variable variable) {
    return condition instanceof Condition.IsA isA
            && isA.subject().equals(new Reference.Bound(variable))
            && isA.noun().equals(variable.noun())
        ? isA.term()
        : Optional.empty();
  }

  /** True for {@code at least 2 studs}, where the verb has its plural form. */
  boolean isPlural(Quantified quantified) {
    return isCounted(quantified) && quantified.number() != 1 && !singular.equals(plural);
  }

  static boolean isCounted(Quantified quantified) {
    return switch (quantified.quantifier()) {
      case EACH, SOME, NO -> false;
      case AT_LEAST, AT_MOST, EXACTLY, ALL_BUT -> true;
    };
  }

  /** With how many are meant: {@code another box}, {@code at least 2 studs}. */
  String counted(Quantified quantified) {
    String other = quantified.others() ? "other " : "";
    String many =
        quantified.number() + " " + other + (quantified.number() == 1 ? singular : plural);
    return switch (quantified.quantifier()) {
      case EACH -> "each " + other + singular;
      case NO -> "no " + other + singular;
      case SOME -> quantified.others() ? "another " + singular : English.withArticle(singular);
      case AT_LEAST -> "at least " + many;
      case AT_MOST -> "at most " + many;
      case EXACTLY -> "exactly " + many;
      case ALL_BUT -> "all but " + many;
    };
  }

  static List<String> parts(String pattern) {
    return List.of(pattern.split(" "));
  }
}
