package org.rimefast.lang.internal.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.message.Readings;
import org.rimefast.lang.internal.resolve.Kind;
import org.rimefast.lang.internal.resolve.Opening;
import org.rimefast.lang.internal.resolve.PhraseReader;
import org.rimefast.lang.internal.resolve.Problems;
import org.rimefast.lang.internal.resolve.Reading;
import org.rimefast.lang.internal.resolve.Result;
import org.rimefast.lang.internal.resolve.Scope;
import org.rimefast.lang.internal.syntax.Clause;
import org.rimefast.lang.internal.syntax.Operand;
import org.rimefast.lang.internal.syntax.Phrase;
import org.rimefast.lang.internal.syntax.Sentence;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Condition.Quantified.Quantifier;
import org.rimefast.lang.rule.Variable;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.vocabulary.Noun;

/** Checks the sentence of a rule. */
final class SentenceChecker {
  /** What a sentence means. */
  record Checked(
      Variable subject,
      Optional<Condition> where,
      Optional<Condition> onlyIf,
      Condition requirement) {}

  /** Which elements a statement speaks of. */
  record Target(Variable subject, Optional<Condition> where, Scope scope) {}

  /** The statement that a noun stands in, for messages. */
  enum Use {
    RULE(
        "each box must ...; to ask for one of several: for each box, some bracket must hold it",
        "\"must\"",
        " must ...; how many or how much comes after \"must\""),
    INSPECT("for each box where it is recessed", "what is asked", ""),
    WAIVE(
        "for \"R-7\", \"R-8\"; or: for each box where it is on the roof",
        "the parts of the waiver",
        "");

    private final String example;
    private final String next;
    private final String rest;

    Use(String example, String next, String rest) {
      this.example = example;
      this.next = next;
      this.rest = rest;
    }
  }

  private final OperandReader operands;
  private final Use use;

  SentenceChecker(OperandReader operands) {
    this(operands, Use.RULE);
  }

  SentenceChecker(OperandReader operands, Use use) {
    this.operands = operands;
    this.use = use;
  }

  Result<Checked> check(Sentence sentence) {
    List<Diagnostic> problems = new ArrayList<>();
    Result<Target> found =
        target(sentence.forEach(), sentence.subject(), sentence.where(), problems);
    if (!found.isOk()) {
      return Result.bad(found.problems());
    }
    Scope scope = found.get().scope();
    Optional<Condition> onlyIf = onlyIf(sentence, scope, problems);
    Result<Condition> requirement = requirement(sentence, scope);
    problems.addAll(requirement.problems());
    if (!problems.isEmpty()) {
      return Result.bad(problems);
    }
    return Result.ok(
        new Checked(found.get().subject(), found.get().where(), onlyIf, requirement.get()));
  }

  /** The elements after {@code for}, in a statement that says no more of them. */
  Result<Target> target(Phrase subject, Optional<Clause> where) {
    List<Diagnostic> problems = new ArrayList<>();
    Result<Target> found = target(true, subject, where, problems);
    return found.isOk() && !problems.isEmpty() ? Result.bad(problems) : found;
  }

  /**
   * The elements that a statement speaks of.
   *
   * @param problems takes what is wrong with the condition, after which the rest can still be read
   */
  private Result<Target> target(
      boolean forEach, Phrase words, Optional<Clause> where, List<Diagnostic> problems) {
    Result<Kind> found = noun(forEach, words);
    if (!found.isOk()) {
      return Result.bad(found.problems());
    }
    Kind kind = found.get();
    Span named = words.span();
    Span whole = where.map(clause -> named.to(clause.span())).orElse(named);
    Scope scope = Scope.of(kind.noun(), kind.singular(), named);
    Variable subject = scope.spoken().get(0).variable();
    Optional<Condition> condition =
        kind.and(where(words, where, scope, problems), subject, named, whole);
    return Result.ok(new Target(subject, condition, scope));
  }

  private Optional<Condition> where(
      Phrase words, Optional<Clause> written, Scope scope, List<Diagnostic> problems) {
    Optional<Clause> clause = written;
    List<Phrase.Item> items = words.items();
    if (items.get(items.size() - 1) instanceof Phrase.WhereItem inner) {
      if (clause.isPresent()) {
        problems.add(
            Problems.error(
                DiagnosticCode.UNREADABLE,
                clause.get().span(),
                "The noun has two \"where\".",
                "Join both conditions with \"and\"."));
        return Optional.empty();
      }
      clause = Optional.of(inner.condition());
    }
    return clause.flatMap(c -> condition(c, scope, problems));
  }

  private Optional<Condition> condition(Clause clause, Scope scope, List<Diagnostic> problems) {
    Result<Condition> result = clause.accept(ClauseChecker.ofCondition(operands, scope, false));
    problems.addAll(result.problems());
    return Optional.ofNullable(result.node());
  }

  private Optional<Condition> onlyIf(Sentence sentence, Scope scope, List<Diagnostic> problems) {
    if (sentence.guard().isEmpty()) {
      return Optional.empty();
    }
    Sentence.Guard guard = sentence.guard().get();
    Optional<Condition> condition = condition(guard.condition(), scope, problems);
    return guard.isUnless()
        ? condition.map(c -> new Condition.Not(c, guard.condition().span()))
        : condition;
  }

  /** The kind of element that the sentence is about. */
  private Result<Kind> noun(boolean forEach, Phrase words) {
    List<Phrase.Item> items = new ArrayList<>(words.items());
    Phrase.Item first = items.get(0);
    String determiner = first instanceof Phrase.WordItem word ? word.text() : "";
    boolean each = determiner.equals("each") || determiner.equals("every");
    if (each) {
      items.remove(0);
    }
    boolean misplaced =
        first instanceof Phrase.BoundItem
            || List.of("a", "an", "some", "no", "the", "another", "any", "all")
                .contains(determiner);
    if (misplaced || (forEach && !each) || items.isEmpty()) {
      return Result.bad(misplaced(forEach, first.span(), determiner));
    }
    if (items.get(items.size() - 1) instanceof Phrase.WhereItem) {
      items.remove(items.size() - 1);
    }
    if (items.isEmpty()) {
      return Result.bad(misplaced(forEach, first.span(), determiner));
    }
    Span span = items.get(0).span().to(items.get(items.size() - 1).span());
    return noun(new Phrase(items, span));
  }

  private Diagnostic misplaced(boolean forEach, Span span, String determiner) {
    boolean no = determiner.equals("no") && use == Use.RULE;
    return Problems.error(
        DiagnosticCode.MISPLACED_DETERMINER,
        span,
        forEach
            ? "After \"for\" comes \"each\" and a noun."
            : "A rule speaks of each element of a kind, so it begins with \"each\" or with the"
                + " noun.",
        no
            ? "Write \"box must not ...\" for \"no box must ...\"."
            : forEach && use == Use.RULE
                ? "Write for example: for each box, its clearance must be at least 2 in"
                : "Write for example: " + use.example);
  }

  private Result<Kind> noun(Phrase phrase) {
    PhraseReader reader = operands.reader(phrase);
    // No noun has been spoken of yet; the scope only carries the reading along.
    Noun none = new Noun("", "", "", List.of());
    Scope scope = Scope.of(none, "", phrase.span());
    List<Reading<Kind>> nouns =
        reader.bareNouns(0, scope, false).stream().filter(r -> r.end() == reader.size()).toList();
    if (nouns.size() > 1) {
      return Result.bad(
          Problems.error(
              DiagnosticCode.AMBIGUOUS_PHRASE,
              phrase.span(),
              "Two kinds of element are called so.",
              "The vocabulary has it as "
                  + English.either(nouns.stream().map(n -> n.get().noun().id()).toList(), 4)
                  + "; one of them needs another name."));
    }
    if (nouns.size() == 1) {
      return nouns.get(0).result();
    }
    boolean value = reader.values(0, scope, null).stream().anyMatch(r -> r.end() == reader.size());
    Diagnostic failure =
        value
            ? Problems.error(
                DiagnosticCode.WRONG_TYPE,
                phrase.span(),
                "A value stands here where a noun belongs.",
                "Say whose it is first: for each box, its clearance must be at least 50 mm")
            : nounFailure(phrase, scope);
    for (Reading<Kind> plural : reader.bareNouns(0, scope, true)) {
      if (plural.end() == reader.size()) {
        String right = plural.get().singular();
        return Result.bad(
            Problems.fixable(
                DiagnosticCode.WRONG_FORM,
                phrase.span(),
                "A rule speaks of one " + right + " at a time.",
                "Write " + English.quoted("each " + right) + ".",
                phrase.span(),
                right));
      }
    }
    return Result.bad(failure);
  }

  /** A new reader, so that only nouns are offered. */
  private Diagnostic nounFailure(Phrase phrase, Scope scope) {
    PhraseReader reader = operands.reader(phrase);
    List<Reading<Kind>> nouns = reader.bareNouns(0, scope, false);
    if (nouns.isEmpty()) {
      return reader.failure();
    }
    Reading<Kind> noun = nouns.get(nouns.size() - 1);
    List<Phrase.Item> rest = phrase.items().subList(noun.end(), phrase.items().size());
    Span span = rest.get(0).span().to(rest.get(rest.size() - 1).span());
    return Problems.error(
        DiagnosticCode.UNKNOWN_WORD,
        span,
        "After "
            + English.quoted(noun.get().singular())
            + " comes \"where\" or "
            + use.next
            + ", not "
            + English.quoted(English.shortened(operands.textOf(span)))
            + ".",
        "Say which ones with \"where\": each "
            + noun.get()
            + (use.rest.isEmpty() ? " where it is recessed" : " where it is ..." + use.rest + "."));
  }

  private Result<Condition> requirement(Sentence sentence, Scope scope) {
    if (sentence.not() && sentence.predicate() instanceof Clause.Joined joined) {
      return Result.bad(
          Problems.error(
              DiagnosticCode.UNCLEAR_NOT,
              joined.span(),
              "It can be understood in two ways what \"not\" belongs to.",
              "Put parentheses around all that must not be: must not ("
                  + English.shortened(operands.textOf(joined.span()))
                  + "); or say it in two rules."));
    }
    if (sentence.clauseSubject().isEmpty()) {
      Subject subject = new Subject.Element(scope.it(), List.of(), scope);
      return said(sentence, subject);
    }
    Operand operand = sentence.clauseSubject().get();
    if (ThereIs.isThere(operand)) {
      return there(sentence, scope);
    }
    Optional<Clause> whole = ClauseChecker.group(operand).filter(c -> mustHold(sentence));
    if (whole.isPresent()) {
      Result<Condition> condition =
          whole.get().accept(ClauseChecker.ofCondition(operands, scope, false));
      return sentence.not() && condition.isOk()
          ? Result.ok(new Condition.Not(condition.get(), whole(sentence)))
          : condition;
    }
    boolean compares =
        sentence.predicate() instanceof Clause.Leaf leaf && leaf.tail() instanceof Clause.Tail.Be;
    Candidates<Subject> subjects = new SubjectReader(operands).of(operand, scope, true, true);
    if (!subjects.isOk()) {
      return Result.bad(subjects.problems());
    }
    List<Reading<Condition>> all = new ArrayList<>();
    for (Reading<Subject> reading : subjects.readings()) {
      if (compares || reading.get() instanceof Subject.Element || subjects.readings().size() == 1) {
        all.add(new Reading<>(0, said(sentence, reading.get()), List.of(), reading.scope()));
      }
    }
    Candidates<Condition> candidates =
        Candidates.of(
            all,
            () ->
                Problems.error(
                    DiagnosticCode.AMBIGUOUS_PHRASE,
                    operand.span(),
                    "It is not clear what this speaks of.",
                    "Write \"its\" before the property."));
    Result<Reading<Condition>> only =
        candidates.only(Readings::exact, Readings::of, operand.span());
    return only.isOk() ? only.get().result() : Result.bad(only.problems());
  }

  /** {@code must hold}, which is said of a condition in parentheses. */
  private static boolean mustHold(Sentence sentence) {
    return sentence.predicate() instanceof Clause.Leaf leaf
        && leaf.with().isEmpty()
        && leaf.tail() instanceof Clause.Tail.Verb verb
        && verb.operand() instanceof Phrase phrase
        && phrase.items().size() == 1
        && phrase.items().get(0) instanceof Phrase.WordItem word
        && word.text().equals("hold");
  }

  private Result<Condition> there(Sentence sentence, Scope scope) {
    if (sentence.predicate() instanceof Clause.Leaf leaf) {
      Result<Condition> exists =
          new ThereIs(operands, scope).check(leaf.tail(), leaf.with(), leaf.span(), true);
      return sentence.not() && exists.isOk()
          ? Result.ok(new Condition.Not(exists.get(), whole(sentence)))
          : exists;
    }
    return Result.bad(
        Problems.error(
            DiagnosticCode.UNREADABLE,
            sentence.predicate().span(),
            "After \"there must be\" only one thing can be named.",
            "Write a rule for each."));
  }

  private static Span whole(Sentence sentence) {
    return sentence.must().span().to(sentence.predicate().span());
  }

  private Result<Condition> said(Sentence sentence, Subject subject) {
    Span span = whole(sentence);
    boolean none = subject.openings().stream().anyMatch(o -> o.quantifier() == Quantifier.NO);
    if (sentence.not() && none) {
      return Result.bad(
          Problems.error(
              DiagnosticCode.UNCLEAR_NOT,
              sentence.must().span(),
              "\"no\" and \"must not\" stand in one sentence.",
              "Write \"no bracket must ...\" or \"each bracket must not ...\"."));
    }
    Result<Condition> predicate =
        sentence.predicate().accept(ClauseChecker.ofPredicate(operands, subject, sentence.not()));
    if (!predicate.isOk()) {
      return predicate;
    }
    Condition said = sentence.not() ? new Condition.Not(predicate.get(), span) : predicate.get();
    return Result.ok(Opening.wrap(subject.openings(), said, span));
  }
}
