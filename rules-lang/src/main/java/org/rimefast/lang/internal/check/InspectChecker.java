package org.rimefast.lang.internal.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.message.Nearest;
import org.rimefast.lang.internal.resolve.Dictionary;
import org.rimefast.lang.internal.resolve.Problems;
import org.rimefast.lang.internal.resolve.Result;
import org.rimefast.lang.internal.resolve.Typing;
import org.rimefast.lang.internal.syntax.Statement;
import org.rimefast.lang.internal.syntax.Word;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Constant;
import org.rimefast.lang.rule.Question;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.units.Dimension;

/** Checks {@code inspect covers-inward "..." for each box ...}. */
final class InspectChecker {
  private static final List<String> ANSWERS = List.of("yes", "no");

  private final Dictionary dictionary;
  private final Map<String, Constant> constants;
  private final OperandReader operands;
  private final List<Diagnostic> diagnostics;

  InspectChecker(
      Dictionary dictionary,
      Map<String, Constant> constants,
      OperandReader operands,
      List<Diagnostic> diagnostics) {
    this.dictionary = dictionary;
    this.constants = constants;
    this.operands = operands;
    this.diagnostics = diagnostics;
  }

  /** The item as a rule whose requirement is the answer; empty if something is wrong. */
  Optional<Rule> check(Statement.Inspect inspect) {
    Fields fields = new Fields(inspect.fields(), diagnostics);
    RuleParts parts =
        new RuleParts(fields, inspect.id(), "inspect item", "after its title", diagnostics);
    Optional<String> ask = parts.required("ask", "ask \"Is the cover on?\"");
    Optional<Boolean> answer = answer(fields, parts);
    Optional<RuleParts.Parts> shared = parts.read(dictionary.vocabulary().stages());
    Optional<Question.Limit> limit = inspect.limit().flatMap(this::limit);
    Result<SentenceChecker.Target> target =
        new SentenceChecker(operands, SentenceChecker.Use.INSPECT)
            .target(inspect.subject(), inspect.where());
    diagnostics.addAll(target.problems());
    boolean limited = limit.isPresent() == inspect.limit().isPresent();
    if (!target.isOk() || !limited || ask.isEmpty() || answer.isEmpty() || shared.isEmpty()) {
      return Optional.empty();
    }
    Question question = new Question(inspect.id().text(), ask.get(), answer.get(), limit);
    SentenceChecker.Target subject = target.get();
    return Optional.of(
        new Rule(
            inspect.id().text(),
            inspect.title().text(),
            subject.subject(),
            subject.where(),
            Optional.empty(),
            new Condition.Answered(
                new Reference.Bound(subject.subject()), question, inspect.subjectSpan()),
            shared.get().severity(),
            shared.get().stage(),
            shared.get().because(),
            shared.get().source(),
            sentence(inspect, question),
            inspect.subjectSpan(),
            Optional.of(question),
            inspect.span()));
  }

  private static String sentence(Statement.Inspect inspect, Question question) {
    return inspect.subjectText()
        + ", ask "
        + English.quoted(question.ask())
        + ", answer "
        + question.answerWord()
        + inspect.limit().map(limit -> ", " + limit.text()).orElse("");
  }

  private Optional<Boolean> answer(Fields fields, RuleParts parts) {
    Optional<Word> word = fields.word("answer");
    if (word.isEmpty()) {
      parts.required("answer", "answer yes");
      return Optional.empty();
    }
    if (ANSWERS.contains(word.get().text())) {
      return Optional.of(word.get().text().equals("yes"));
    }
    diagnostics.add(
        RuleParts.notOneOf(DiagnosticCode.UNKNOWN_ANSWER, "answer", word.get(), ANSWERS));
    return Optional.empty();
  }

  private Optional<Question.Limit> limit(Statement.Limit written) {
    Optional<Value> value =
        written.value().isPresent()
            ? written
                .value()
                .map(
                    quantity ->
                        new Value.Literal(quantity, Typing.typeOf(quantity), written.valueSpan()))
            : constant(written);
    if (value.isEmpty()) {
      return Optional.empty();
    }
    Question.Limit limit = new Question.Limit(written.comparison(), value.get());
    if (limit.type().dimension().equals(Dimension.NUMBER)) {
      diagnostics.add(
          Problems.error(
              DiagnosticCode.MISSING_UNIT,
              written.valueSpan(),
              "The limit of a reading has no unit.",
              "Write what is read with its unit: reading at least 5 degC; what is counted can be"
                  + " asked with yes or no."));
      return Optional.empty();
    }
    return Optional.of(limit);
  }

  private Optional<Value> constant(Statement.Limit written) {
    String name = String.join(" ", written.name().stream().map(Word::text).toList());
    Constant constant = constants.get(name);
    if (constant != null) {
      return Optional.of(new Value.Named(constant, written.valueSpan()));
    }
    String headline = "There is no constant " + English.quoted(English.shortened(name)) + ".";
    List<String> near = Nearest.to(name, constants.keySet());
    diagnostics.add(
        near.isEmpty()
            ? Problems.error(
                DiagnosticCode.UNKNOWN_WORD,
                written.valueSpan(),
                headline,
                "The limit of a reading is a number with its unit, such as 5 degC, or a constant of"
                    + " the standard.")
            : Problems.fixable(
                DiagnosticCode.UNKNOWN_WORD,
                written.valueSpan(),
                headline,
                "Did you mean " + English.quoted(near.get(0)) + "?",
                written.valueSpan(),
                near.get(0)));
    return Optional.empty();
  }
}
