package org.rimefast.lang.internal.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.cases.Case;
import org.rimefast.lang.internal.message.English;
import org.rimefast.lang.internal.resolve.Constants;
import org.rimefast.lang.internal.resolve.Dictionary;
import org.rimefast.lang.internal.resolve.Problems;
import org.rimefast.lang.internal.resolve.Result;
import org.rimefast.lang.internal.resolve.Terms;
import org.rimefast.lang.internal.resolve.Typing;
import org.rimefast.lang.internal.syntax.Statement;
import org.rimefast.lang.internal.syntax.Word;
import org.rimefast.lang.rule.Constant;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.source.Diagnostic;
import org.rimefast.lang.source.DiagnosticCode;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;

/** Checks the statements of one text. */
public final class StandardChecker {
  private final Dictionary dictionary;
  private final SourceText source;
  private final List<Diagnostic> diagnostics = new ArrayList<>();
  private final List<Rule> rules = new ArrayList<>();
  private final Map<String, Constant> constants = new LinkedHashMap<>();
  private Statement.@Nullable Header header;

  /** A checker for one text. */
  public StandardChecker(Dictionary dictionary, SourceText source) {
    this.dictionary = dictionary;
    this.source = source;
  }

  /** What is wrong with the statements. */
  public List<Diagnostic> diagnostics() {
    return diagnostics;
  }

  /**
   * The typed standard, as far as it makes sense; only whole if there are no errors.
   *
   * @param isWhole false if some statement could not be read, so that a missing one is no news
   */
  public Optional<Standard> check(List<Statement> statements, boolean isWhole) {
    headers(statements, isWhole);
    for (Statement statement : statements) {
      if (statement instanceof Statement.Let let) {
        constant(let);
      }
    }
    Terms terms = new Terms();
    OperandReader operands = new OperandReader(dictionary, new Constants(constants), terms, source);
    TermChecker definitions = new TermChecker(dictionary, constants, terms, operands, diagnostics);
    definitions.check(statements);
    InspectChecker inspections = new InspectChecker(dictionary, constants, operands, diagnostics);
    Map<String, Span> ids = new HashMap<>();
    for (Statement statement : statements) {
      if (statement instanceof Statement.Rule rule) {
        rule(rule, operands, ids);
      } else if (statement instanceof Statement.Inspect inspect) {
        takeId(inspect.id(), ids);
        inspections.check(inspect).ifPresent(rules::add);
      } else if (isOfWaivers(statement)) {
        diagnostics.add(
            Problems.error(
                DiagnosticCode.MISPLACED_STATEMENT,
                statement.span(),
                "Waivers do not stand in a standard.",
                "Put them in a file of their own, which begins with: waivers for "
                    + Optional.ofNullable(header)
                        .map(known -> known.name().text())
                        .orElse("cold-steel-modules")));
      }
    }
    CaseChecker examples =
        new CaseChecker(
            source, isWhole ? Optional.of(ids.keySet()) : Optional.empty(), diagnostics);
    List<Case> cases = examples.check(statements);
    examples.refuseHeader(statements);
    return Optional.ofNullable(header).map(found -> standard(found, terms, cases));
  }

  private static boolean isOfWaivers(Statement statement) {
    return statement instanceof Statement.Waivers || statement instanceof Statement.Waive;
  }

  private void takeId(Word id, Map<String, Span> ids) {
    Span first = ids.putIfAbsent(id.text(), id.span());
    if (first != null) {
      diagnostics.add(repeated("rule", id.text(), id.span(), first));
    }
  }

  private Standard standard(Statement.Header found, Terms terms, List<Case> cases) {
    Fields fields = new Fields(found.fields(), new ArrayList<>());
    return new Standard(
        found.name().text(),
        found.edition().text(),
        fields.text("title").orElse(""),
        fields.text("caution").orElse(""),
        List.copyOf(constants.values()),
        terms.defined(),
        rules,
        cases,
        source);
  }

  private void headers(List<Statement> statements, boolean isWhole) {
    for (int i = 0; i < statements.size(); i++) {
      if (statements.get(i) instanceof Statement.Header found) {
        Statement.Header first = header;
        if (first != null) {
          diagnostics.add(
              Problems.related(
                  DiagnosticCode.MISPLACED_STANDARD,
                  found.name().span(),
                  "A text holds one standard, and this is the second.",
                  "Put it in a file of its own.",
                  List.of(new Diagnostic.Related(first.name().span(), "the first one is here"))));
        } else {
          header = found;
          new Fields(found.fields(), diagnostics);
          if (i > 0) {
            diagnostics.add(
                Problems.error(
                    DiagnosticCode.MISPLACED_STANDARD,
                    found.name().span(),
                    "The standard is named before its constants and rules.",
                    "Move this statement to the top of the text."));
          }
        }
      }
    }
    boolean isCases = statements.stream().anyMatch(Statement.CaseFile.class::isInstance);
    if (header == null && isWhole && !isCases) {
      diagnostics.add(
          Problems.error(
              DiagnosticCode.MISSING_STANDARD,
              new Span(0, 0),
              "The text does not say which standard it is.",
              "Begin with: standard cold-steel-modules edition 2026-11"));
    }
  }

  private void constant(Statement.Let let) {
    Fields fields = new Fields(let.fields(), diagnostics);
    fields.refuse(List.of("severity", "stage"), "A constant");
    List<String> words = let.name().stream().map(Word::text).toList();
    String name = String.join(" ", words);
    Span span = let.name().get(0).span().to(let.name().get(words.size() - 1).span());
    Constant other = constants.get(name);
    if (other != null) {
      diagnostics.add(repeated("constant", name, span, other.span()));
      return;
    }
    if (dictionary.hasPhrase(name)) {
      diagnostics.add(
          Problems.error(
              DiagnosticCode.NAME_TAKEN,
              span,
              "The vocabulary already has the word " + English.quoted(name) + ".",
              "Choose another name, such as " + English.quoted("least " + name) + "."));
      return;
    }
    Value.Literal literal =
        new Value.Literal(let.quantity(), Typing.typeOf(let.quantity()), let.quantitySpan());
    constants.put(
        name,
        new Constant(name, literal, fields.text("because"), fields.text("source"), let.span()));
  }

  static Diagnostic repeated(String kind, String name, Span span, Span first) {
    return Problems.related(
        DiagnosticCode.REPEATED_NAME,
        span,
        "There already is a " + kind + " called " + English.quoted(name) + ".",
        "Give one of them another name.",
        List.of(new Diagnostic.Related(first, "the first one is here")));
  }

  private void rule(Statement.Rule rule, OperandReader operands, Map<String, Span> ids) {
    takeId(rule.id(), ids);
    Optional<RuleParts.Parts> parts =
        new RuleParts(
                new Fields(rule.fields(), diagnostics),
                rule.id(),
                "rule",
                "after its sentence",
                diagnostics)
            .read(dictionary.vocabulary().stages());
    Result<SentenceChecker.Checked> checked = new SentenceChecker(operands).check(rule.sentence());
    diagnostics.addAll(checked.problems());
    if (!checked.isOk() || parts.isEmpty()) {
      return;
    }
    SentenceChecker.Checked sentence = checked.get();
    rules.add(
        new Rule(
            rule.id().text(),
            rule.title().text(),
            sentence.subject(),
            sentence.where(),
            sentence.onlyIf(),
            sentence.requirement(),
            parts.get().severity(),
            parts.get().stage(),
            parts.get().because(),
            parts.get().source(),
            rule.sentenceText(),
            rule.sentence().span(),
            rule.span()));
  }
}
