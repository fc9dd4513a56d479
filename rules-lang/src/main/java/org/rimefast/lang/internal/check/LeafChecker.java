package org.rimefast.lang.internal.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.resolve.Opening;
import org.rimefast.lang.internal.resolve.PhraseReader;
import org.rimefast.lang.internal.resolve.Problems;
import org.rimefast.lang.internal.resolve.Reading;
import org.rimefast.lang.internal.resolve.Result;
import org.rimefast.lang.internal.resolve.Scope;
import org.rimefast.lang.internal.syntax.Clause;
import org.rimefast.lang.internal.syntax.Operand;
import org.rimefast.lang.internal.syntax.Phrase;
import org.rimefast.lang.internal.syntax.Word;
import org.rimefast.lang.rule.Comparison;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Condition.Quantified.Quantifier;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.Span;

/** Checks one plain statement. */
final class LeafChecker {
  private final OperandReader operands;
  private final boolean negated;

  LeafChecker(OperandReader operands, boolean negated) {
    this.operands = operands;
    this.negated = negated;
  }

  /**
   * What a leaf says of a subject.
   *
   * @param base true after {@code must}, where verbs have their base form
   */
  Candidates<Condition> said(Subject subject, Clause.Leaf leaf, boolean base) {
    if (leaf.tail() instanceof Clause.Tail.Be be) {
      Optional<Diagnostic> form = form(subject, be.verb(), base, "be", "is", "are");
      return form.isPresent()
          ? Candidates.bad(form.get())
          : finished(be(subject, be), subject, be.not(), leaf, base);
    }
    if (leaf.tail() instanceof Clause.Tail.Have have) {
      Optional<Diagnostic> form =
          have.not()
              ? form(subject, have.verb(), false, "do", "does", "do")
              : form(subject, have.verb(), base, "have", "has", "have");
      return form.isPresent()
          ? Candidates.bad(form.get())
          : finished(have(subject, have, base || have.not()), subject, have.not(), leaf, base);
    }
    if (leaf.tail() instanceof Clause.Tail.DoNot doNot) {
      Optional<Diagnostic> form = form(subject, doNot.verb(), false, "do", "does", "do");
      return form.isPresent()
          ? Candidates.bad(form.get())
          : finished(
              verb(subject, doNot.operand(), PhraseReader.Use.BASE), subject, true, leaf, base);
    }
    if (leaf.tail() instanceof Clause.Tail.Compare compare) {
      return finished(compared(subject, compare.sign(), leaf.span()), subject, false, leaf, base);
    }
    Clause.Tail.Verb verb = (Clause.Tail.Verb) leaf.tail();
    return finished(
        verb(subject, verb.operand(), PhraseReader.Use.BASE), subject, false, leaf, base);
  }

  /** The wrong form of is, has or does. */
  private static Optional<Diagnostic> form(
      Subject subject, Word verb, boolean base, String bare, String one, String many) {
    String right = base ? bare : subject.isPlural() ? many : one;
    if (verb.text().equals(right)) {
      return Optional.empty();
    }
    return Optional.of(
        Problems.fixable(
            DiagnosticCode.WRONG_FORM,
            verb.span(),
            English.quoted(verb.text()) + " is the wrong form here.",
            "Write " + English.quoted(right) + ".",
            verb.span(),
            right));
  }

  /** A clause in which subject and verb stand in one phrase: {@code some bracket holds it}. */
  Candidates<Condition> verbWithSubject(Clause.Tail.Verb verb, Clause.Leaf leaf, Scope scope) {
    if (!(verb.operand() instanceof Phrase phrase)) {
      return Candidates.bad(noCondition(verb.operand()));
    }
    PhraseReader reader = operands.reader(phrase);
    List<Reading<Reference>> subjects = reader.elements(0, scope);
    List<Reading<Condition>> all = new ArrayList<>();
    List<Diagnostic> problems = new ArrayList<>();
    for (Reading<Reference> reading : subjects) {
      if (!reading.isOk()) {
        problems.addAll(reading.result().problems());
        continue;
      }
      Subject subject = SubjectReader.element(reading).get();
      PhraseReader.Use use = subject.isPlural() ? PhraseReader.Use.BASE : PhraseReader.Use.THIRD;
      List<Reading<Condition>> verbs = new ArrayList<>();
      for (Reading<Condition> said :
          reader.relations(reading.end(), reading.scope(), reading.get(), use)) {
        if (said.end() == reader.size()) {
          verbs.add(said);
        }
      }
      if (!verbs.isEmpty()) {
        Candidates<Condition> finished =
            finished(Candidates.of(verbs, reader::failure), subject, false, leaf, false);
        all.addAll(finished.readings());
        problems.addAll(0, finished.problems());
      }
    }
    if (!all.isEmpty()) {
      return new Candidates<>(all, List.of());
    }
    Optional<BoundSplit> split = BoundSplit.of(phrase);
    if (subjects.isEmpty() && split.isPresent() && split.get().left().isEmpty()) {
      return Candidates.bad(Comparisons.nothingBefore(split.get().bound()));
    }
    boolean value =
        reader.values(0, scope, null).stream()
            .anyMatch(reading -> reading.isOk() && reading.end() == reader.size());
    if (value) {
      return Candidates.bad(noCondition(phrase));
    }
    return Candidates.bad(problems.isEmpty() ? reader.failure() : problems.get(0));
  }

  private static Diagnostic noCondition(Operand operand) {
    return Problems.error(
        DiagnosticCode.MISSING_COMPARISON,
        operand.span(),
        "A value stands here where a condition belongs.",
        "Say what it is compared with, such as: clearance >= 50 mm");
  }

  private Candidates<Condition> verb(Subject subject, Operand operand, PhraseReader.Use use) {
    Optional<BoundSplit> split = BoundSplit.of(operand);
    if (subject instanceof Subject.Quantity
        && split.isPresent()
        && split.get().left().isEmpty()
        && split.get().right().isPresent()) {
      // "its clearance must be at least 2 in and at most 4 in"
      return compared(subject, split.get().comparison(), split.get().right().get(), operand.span());
    }
    if (!(operand instanceof Phrase phrase)) {
      return Candidates.bad(
          Problems.error(
              DiagnosticCode.BAD_ARITHMETIC,
              operand.span(),
              "A sum cannot stand here without parentheses.",
              "Put it in parentheses: within (clearance + 2 in) of a stud"));
    }
    if (!(subject instanceof Subject.Element element)) {
      return Candidates.bad(
          Problems.error(
              DiagnosticCode.WRONG_TYPE,
              operand.span(),
              "A value cannot do anything; it can only be compared.",
              "Write for example: its clearance must be at least 50 mm"));
    }
    PhraseReader reader = operands.reader(phrase);
    List<Reading<Condition>> whole =
        reader.relations(0, element.scope(), element.reference(), use).stream()
            .filter(reading -> reading.end() == reader.size())
            .toList();
    return Candidates.of(whole, reader::failure);
  }

  private Candidates<Condition> be(Subject subject, Clause.Tail.Be be) {
    if (be.sign().isPresent()) {
      Clause.Sign sign = be.sign().get();
      return compared(subject, sign, sign.span().to(sign.right().span()));
    }
    Operand operand = be.operand().orElseThrow();
    Optional<BoundSplit> split = BoundSplit.of(operand);
    if (split.isPresent() && split.get().left().isEmpty()) {
      if (split.get().right().isEmpty()) {
        return Candidates.bad(Comparisons.nothingAfter(split.get().bound()));
      }
      return compared(subject, split.get().comparison(), split.get().right().get(), operand.span());
    }
    if (subject instanceof Subject.Element element) {
      return state(element, operand);
    }
    return compared(subject, Comparison.EQUAL, operand, operand.span());
  }

  /** What stands after {@code is}: a relation, a kind of element, or one certain element. */
  private Candidates<Condition> state(Subject.Element subject, Operand operand) {
    if (!(operand instanceof Phrase phrase)) {
      return verb(subject, operand, PhraseReader.Use.STATE);
    }
    PhraseReader reader = operands.reader(phrase);
    List<Reading<Condition>> all =
        new ArrayList<>(
            reader.relations(0, subject.scope(), subject.reference(), PhraseReader.Use.STATE));
    all.addAll(reader.kindTests(0, subject.scope(), subject.reference(), subject.isPlural()));
    all.addAll(reader.sameTests(0, subject.scope(), subject.reference()));
    return Candidates.of(
        all.stream().filter(reading -> reading.end() == reader.size()).toList(), reader::failure);
  }

  private Candidates<Condition> compared(Subject subject, Clause.Sign sign, Span span) {
    return compared(subject, sign.comparison(), sign.right(), span);
  }

  private Candidates<Condition> compared(
      Subject subject, Comparison comparison, Operand right, Span span) {
    if (!(subject instanceof Subject.Quantity quantity)) {
      return Candidates.bad(
          Problems.error(
              DiagnosticCode.WRONG_TYPE,
              span,
              English.sentence(
                      English.withArticle(
                          ((Subject.Element) subject).reference().noun().singular()))
                  + " is no number that could be compared.",
              "Name a property of it, such as: its clearance is at least 50 mm"));
    }
    Reading<Value> left =
        new Reading<>(0, Result.ok(quantity.value()), List.of(), quantity.scope());
    return Candidates.of(
        new Comparisons(operands).with(left, comparison, right, quantity.value().span().to(span)),
        () -> {
          throw new IllegalStateException("no reading to compare at " + span);
        });
  }

  private Candidates<Condition> have(Subject subject, Clause.Tail.Have have, boolean base) {
    if (!(subject instanceof Subject.Element element)) {
      return Candidates.bad(
          Problems.error(
              DiagnosticCode.WRONG_TYPE,
              have.verb().span(),
              "A value has nothing; it can only be compared.",
              "Write for example: its clearance must be at least 50 mm"));
    }
    Scope scope = element.scope().withBare(element.reference());
    if (have.sign().isEmpty() && have.operand() instanceof Phrase phrase) {
      Candidates<Condition> verb = haveVerb(subject, have.verb(), phrase, base);
      if (verb.isOk()) {
        return verb;
      }
    }
    return new Comparisons(operands).of(have.operand(), have.sign(), scope);
  }

  /** A verb of the vocabulary that begins with {@code have}. */
  private Candidates<Condition> haveVerb(Subject subject, Word verb, Phrase phrase, boolean base) {
    List<Phrase.Item> items = new ArrayList<>();
    boolean third = !base && !subject.isPlural();
    items.add(new Phrase.WordItem(third ? "has" : "have", verb.span()));
    items.addAll(phrase.items());
    PhraseReader.Use use = third ? PhraseReader.Use.THIRD : PhraseReader.Use.BASE;
    return verb(subject, new Phrase(items, verb.span().to(phrase.span())), use);
  }

  /** Adds {@code with}, {@code not} and the nouns around it. */
  private Candidates<Condition> finished(
      Candidates<Condition> cores, Subject subject, boolean not, Clause.Leaf leaf, boolean base) {
    if (!cores.isOk()) {
      return cores;
    }
    List<Reading<Condition>> all = new ArrayList<>();
    for (Reading<Condition> core : cores.readings()) {
      Result<Condition> whole = finished(core, subject, not, leaf, base);
      all.add(new Reading<>(0, whole, List.of(), core.scope()));
    }
    return Candidates.of(
        all,
        () -> {
          throw new IllegalStateException("no reading of " + leaf.span());
        });
  }

  private Result<Condition> finished(
      Reading<Condition> core, Subject subject, boolean not, Clause.Leaf leaf, boolean base) {
    Span span = leaf.span();
    Optional<Diagnostic> unclear = unclearNot(core.openings(), not, subject, base, span);
    if (unclear.isPresent()) {
      return Result.bad(unclear.get());
    }
    Condition said = Opening.wrap(core.openings(), core.get(), span);
    Result<List<Condition>> with =
        new WithChecker(operands).of(subject, core.openings(), leaf.with());
    if (!with.isOk()) {
      return Result.bad(with.problems());
    }
    if (!with.get().isEmpty()) {
      List<Condition> parts = new ArrayList<>(List.of(said));
      parts.addAll(with.get());
      said = new Condition.And(parts, span);
    }
    if (not) {
      said = negation(said, span);
    }
    // After must, the caller closes the subject's own nouns around the whole predicate.
    return Result.ok(base ? said : Opening.wrap(subject.openings(), said, span));
  }

  private static Condition negation(Condition said, Span span) {
    if (said instanceof Condition.Compare compare && compare.comparison() == Comparison.EQUAL) {
      return new Condition.Compare(
          compare.left(), Comparison.NOT_EQUAL, compare.right(), compare.span());
    }
    return new Condition.Not(said, span);
  }

  private Optional<Diagnostic> unclearNot(
      List<Opening> named, boolean not, Subject subject, boolean base, Span span) {
    boolean denied = negated != not;
    boolean noSubject =
        !base && subject.openings().stream().anyMatch(o -> o.quantifier() == Quantifier.NO);
    if (denied && noSubject) {
      return Optional.of(
          unclear(span, "\"no\" and \"not\" stand in one clause.", "Say it with one of them."));
    }
    for (Opening opening : named) {
      if (denied && opening.quantifier() == Quantifier.EACH) {
        return Optional.of(
            unclear(
                opening.span(),
                "\"not\" with \"each\" can mean none of them, or not all of them.",
                "Write \"no "
                    + opening.variable().noun()
                    + "\" without \"not\" for none of them."));
      }
      if (denied && opening.quantifier() == Quantifier.ALL_BUT) {
        return Optional.of(
            unclear(
                opening.span(),
                "\"not\" with \"all but\" can be understood in two ways.",
                "Say how many do: at least 2, at most 1, or no "
                    + opening.variable().noun()
                    + "."));
      }
      if (denied && opening.quantifier() == Quantifier.NO) {
        return Optional.of(
            unclear(
                opening.span(),
                "\"not\" and \"no\" stand in one clause.",
                "Write \"not ... "
                    + English.withArticle(opening.variable().noun().singular())
                    + "\", or \"no "
                    + opening.variable().noun()
                    + "\" without \"not\"."));
      }
    }
    return Optional.empty();
  }

  private static Diagnostic unclear(Span span, String headline, String help) {
    return Problems.error(DiagnosticCode.UNCLEAR_NOT, span, headline, help);
  }
}
