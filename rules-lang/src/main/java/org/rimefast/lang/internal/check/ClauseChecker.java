package org.rimefast.lang.internal.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.message.Readings;
import org.rimefast.lang.internal.resolve.Opening;
import org.rimefast.lang.internal.resolve.PhraseReader;
import org.rimefast.lang.internal.resolve.Problems;
import org.rimefast.lang.internal.resolve.Reading;
import org.rimefast.lang.internal.resolve.Result;
import org.rimefast.lang.internal.resolve.Scope;
import org.rimefast.lang.internal.syntax.Clause;
import org.rimefast.lang.internal.syntax.Operand;
import org.rimefast.lang.internal.syntax.Phrase;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.Span;

/** Checks conditions, and what stands after {@code must}. */
final class ClauseChecker implements Clause.Visitor<Result<Condition>> {
  private static final int MOST_PARTS_SHOWN = 6;

  private final OperandReader operands;
  private final Scope scope;
  private final @Nullable Subject subject;
  private final boolean negated;

  private ClauseChecker(
      OperandReader operands, Scope scope, @Nullable Subject subject, boolean negated) {
    this.operands = operands;
    this.scope = scope;
    this.subject = subject;
    this.negated = negated;
  }

  /** For a condition, whose clauses have their own subjects. */
  static ClauseChecker ofCondition(OperandReader operands, Scope scope, boolean negated) {
    return new ClauseChecker(operands, scope, null, negated);
  }

  /** For what stands after {@code must}, all of it said of one subject. */
  static ClauseChecker ofPredicate(OperandReader operands, Subject subject, boolean negated) {
    return new ClauseChecker(operands, subject.scope(), subject, negated);
  }

  @Override
  public Result<Condition> visitJoined(Clause.Joined joined) {
    Optional<Diagnostic> mixed = mixed(joined);
    if (mixed.isPresent()) {
      return Result.bad(mixed.get());
    }
    List<Condition> parts = new ArrayList<>();
    List<Diagnostic> problems = new ArrayList<>();
    for (Clause part : joined.parts()) {
      Result<Condition> result = part.accept(this);
      problems.addAll(result.problems());
      if (result.isOk()) {
        parts.add(result.get());
      }
    }
    if (!problems.isEmpty()) {
      return Result.bad(problems);
    }
    return Result.ok(
        joined.conjunctions().get(0).isAnd()
            ? new Condition.And(parts, joined.span())
            : new Condition.Or(parts, joined.span()));
  }

  private Optional<Diagnostic> mixed(Clause.Joined joined) {
    boolean first = joined.conjunctions().get(0).isAnd();
    for (Clause.Conjunction conjunction : joined.conjunctions()) {
      if (conjunction.isAnd() != first) {
        return Optional.of(
            Problems.related(
                DiagnosticCode.MIXED_AND_OR,
                conjunction.span(),
                "\"and\" and \"or\" stand side by side, which can be understood in two ways.",
                "Write " + grouped(joined, true) + "; or write " + grouped(joined, false) + ".",
                List.of(
                    new Diagnostic.Related(
                        joined.conjunctions().get(0).span(), "the other one is here"))));
      }
    }
    return Optional.empty();
  }

  /** The parts in the author's words, with parentheses around those joined by one of the words. */
  private String grouped(Clause.Joined joined, boolean byAnd) {
    if (joined.parts().size() > MOST_PARTS_SHOWN) {
      return byAnd ? "(A and B) or C" : "A and (B or C)";
    }
    StringBuilder words = new StringBuilder();
    boolean open = false;
    for (int i = 0; i < joined.parts().size(); i++) {
      boolean last = i == joined.conjunctions().size();
      boolean joins = !last && joined.conjunctions().get(i).isAnd() == byAnd;
      words.append(joins && !open ? "(" : "");
      words.append(English.shortened(operands.textOf(joined.parts().get(i).span())));
      words.append(open && !joins ? ")" : "");
      open = joins;
      if (!last) {
        words.append(joined.conjunctions().get(i).isAnd() ? " and " : " or ");
      }
    }
    return words.toString();
  }

  @Override
  public Result<Condition> visitNegated(Clause.Negated clause) {
    ClauseChecker inner = new ClauseChecker(operands, scope, subject, !negated);
    Result<Condition> part = clause.part().accept(inner);
    return part.isOk() ? Result.ok(new Condition.Not(part.get(), clause.span())) : part;
  }

  /**
   * Parentheses leave no doubt what a "not" before them covers, so within them it is not unclear.
   */
  private ClauseChecker plain() {
    return negated ? new ClauseChecker(operands, scope, subject, false) : this;
  }

  @Override
  public Result<Condition> visitGrouped(Clause.Grouped grouped) {
    Result<Condition> part = grouped.part().accept(plain());
    if (grouped.with().isEmpty()) {
      return part;
    }
    List<Diagnostic> problems = new ArrayList<>(part.problems());
    List<Condition> all = new ArrayList<>();
    if (part.isOk()) {
      all.add(part.get());
    }
    Subject owner = subject;
    Result<List<Condition>> with =
        owner == null
            ? Result.ok(List.of())
            : new WithChecker(operands).of(owner, List.of(), grouped.with());
    problems.addAll(with.problems());
    if (!problems.isEmpty()) {
      return Result.bad(problems);
    }
    all.addAll(with.get());
    return Result.ok(new Condition.And(all, grouped.span()));
  }

  @Override
  public Result<Condition> visitLeaf(Clause.Leaf leaf) {
    Subject known = subject;
    LeafChecker leaves = new LeafChecker(operands, negated);
    if (known != null) {
      return only(leaves.said(known, leaf, true), leaf.span());
    }
    if (leaf.tail() instanceof Clause.Tail.Verb verb) {
      Optional<Clause> group = group(verb.operand());
      if (group.isPresent() && leaf.with().isEmpty()) {
        return group.get().accept(plain());
      }
      return only(leaves.verbWithSubject(verb, leaf, scope), leaf.span());
    }
    return withSubject(leaves, leaf);
  }

  /** Parentheses that hold a whole condition. */
  static Optional<Clause> group(Operand operand) {
    return operand instanceof Phrase phrase
            && phrase.items().size() == 1
            && phrase.items().get(0) instanceof Phrase.GroupItem group
        ? Optional.of(group.condition())
        : Optional.empty();
  }

  private Result<Condition> withSubject(LeafChecker leaves, Clause.Leaf leaf) {
    Operand operand = leaf.subject().orElseThrow();
    if (ThereIs.isThere(operand)) {
      return new ThereIs(operands, scope).check(leaf.tail(), leaf.with(), leaf.span(), false);
    }
    Candidates<Subject> subjects = new SubjectReader(operands).of(operand, scope, leaf.tail());
    if (!subjects.isOk()) {
      return Result.bad(subjects.problems());
    }
    List<Reading<Condition>> all = new ArrayList<>();
    List<Diagnostic> problems = new ArrayList<>();
    for (Reading<Subject> reading : subjects.readings()) {
      Candidates<Condition> said = leaves.said(reading.get(), leaf, false);
      all.addAll(said.readings());
      problems.addAll(said.problems());
    }
    return all.isEmpty()
        ? Result.bad(problems.subList(0, 1))
        : only(new Candidates<>(all, List.of()), leaf.span());
  }

  @Override
  public Result<Condition> visitForMany(Clause.ForMany forMany) {
    PhraseReader reader = operands.reader(forMany.many());
    Candidates<Reference> many =
        Candidates.of(
            reader.elements(0, scope).stream().filter(r -> r.end() == reader.size()).toList(),
            reader::failure);
    if (!many.isOk()) {
      return Result.bad(many.problems());
    }
    List<Reading<Condition>> all = new ArrayList<>();
    for (Reading<Reference> reading : many.readings()) {
      if (reading.openings().size() != 1) {
        return Result.bad(notMany(forMany.many().span()));
      }
      Scope inner = new Scope(reading.scope().spoken(), reading.get(), reading.get());
      Result<Condition> part = forMany.part().accept(ofCondition(operands, inner, false));
      Result<Condition> whole =
          part.isOk()
              ? Result.ok(Opening.wrap(reading.openings(), part.get(), forMany.span()))
              : part;
      all.add(new Reading<>(0, whole, List.of(), scope));
    }
    return only(Candidates.of(all, reader::failure), forMany.span());
  }

  private static Diagnostic notMany(Span span) {
    return Problems.error(
        DiagnosticCode.MISPLACED_DETERMINER,
        span,
        "After \"for\" comes how many are meant: \"each\", \"no\" or a number with a noun.",
        "Write for example: (for each box (where it is recessed), its depth is at least 2 in)");
  }

  private static Result<Condition> only(Candidates<Condition> candidates, Span span) {
    Result<Reading<Condition>> only = candidates.only(Readings::exact, Readings::of, span);
    return only.isOk() ? only.get().result() : Result.bad(only.problems());
  }
}
