package org.rimefast.lang.internal.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.message.Readings;
import org.rimefast.lang.internal.resolve.Opening;
import org.rimefast.lang.internal.resolve.Problems;
import org.rimefast.lang.internal.resolve.Reading;
import org.rimefast.lang.internal.resolve.Result;
import org.rimefast.lang.internal.syntax.Clause;
import org.rimefast.lang.internal.syntax.Operand;
import org.rimefast.lang.internal.syntax.Phrase;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.vocabulary.Noun;

/** Checks {@code with clearance >= 50 mm} behind a verb. */
final class WithChecker {
  private final OperandReader operands;

  WithChecker(OperandReader operands) {
    this.operands = operands;
  }

  /**
   * The comparisons, all of them said of the clause's subject.
   *
   * @param named the quantified nouns between the verb and what is compared
   */
  Result<List<Condition>> of(Subject subject, List<Opening> named, List<Clause.With> withs) {
    List<Condition> conditions = new ArrayList<>();
    List<Diagnostic> problems = new ArrayList<>();
    if (!(subject instanceof Subject.Element element)) {
      return withs.isEmpty() ? Result.ok(List.of()) : Result.bad(ofValue(withs.get(0)));
    }
    for (Clause.With with : withs) {
      Optional<Diagnostic> trap = trap(element, named, with);
      if (trap.isPresent()) {
        problems.add(trap.get());
        continue;
      }
      Candidates<Condition> compared =
          new Comparisons(operands)
              .of(with.operand(), with.sign(), element.scope().withBare(element.reference()));
      Result<Reading<Condition>> only = compared.only(Readings::exact, Readings::of, with.span());
      problems.addAll(only.problems());
      if (only.isOk()) {
        Reading<Condition> reading = only.get();
        conditions.add(Opening.wrap(reading.openings(), reading.get(), with.span()));
      }
    }
    return problems.isEmpty() ? Result.ok(conditions) : Result.bad(problems);
  }

  private static Diagnostic ofValue(Clause.With with) {
    return Problems.error(
        DiagnosticCode.MISSING_COMPARISON,
        with.span(),
        "\"with\" stands behind a verb only.",
        "Join two comparisons with \"and\".");
  }

  /**
   * In {@code touch a stud with depth > 2 in} a reader may take the depth for the stud's, while a
   * bare property is the subject's.
   */
  private Optional<Diagnostic> trap(
      Subject.Element subject, List<Opening> named, Clause.With with) {
    String bare = bareProperty(with.operand());
    for (Opening opening : named) {
      Noun noun = opening.variable().noun();
      if (!bare.isEmpty() && has(noun, bare)) {
        boolean both = has(subject.reference().noun(), bare);
        return Optional.of(
            Problems.error(
                both ? DiagnosticCode.AMBIGUOUS_PHRASE : DiagnosticCode.WRONG_OWNER,
                with.span(),
                both
                    ? "It can be the "
                        + bare
                        + " of the "
                        + noun
                        + " or of the "
                        + subject.reference().noun()
                        + "."
                    : "\"with\" speaks of the "
                        + subject.reference().noun()
                        + ", and "
                        + English.withArticle(subject.reference().noun().singular())
                        + " has no "
                        + bare
                        + ".",
                "For the "
                    + noun
                    + ", write "
                    + English.quoted(noun + " (where " + bare + " ...)")
                    + (both
                        ? "; for the "
                            + subject.reference().noun()
                            + ", put "
                            + English.quoted("and have " + bare + " ...")
                            + " after it."
                        : ".")));
      }
    }
    return Optional.empty();
  }

  private boolean has(Noun noun, String property) {
    return operands.dictionary().vocabulary().properties().stream()
        .anyMatch(p -> noun.isA(p.owner()) && p.pattern().equals(property));
  }

  /** The words before the comparison, if they are a property without an owner. */
  private static String bareProperty(Operand operand) {
    Optional<BoundSplit> split = BoundSplit.of(operand);
    Operand left = split.isPresent() ? split.get().left().orElse(operand) : operand;
    if (!(left instanceof Phrase phrase)) {
      return "";
    }
    List<String> words = new ArrayList<>();
    for (Phrase.Item item : phrase.items()) {
      if (!(item instanceof Phrase.WordItem word)) {
        return "";
      }
      words.add(word.text());
    }
    return String.join(" ", words);
  }
}
