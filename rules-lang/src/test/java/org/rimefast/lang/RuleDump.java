package org.rimefast.lang;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.rimefast.lang.cases.Case;
import org.rimefast.lang.cases.CasePlan;
import org.rimefast.lang.cases.Expectation;
import org.rimefast.lang.rule.Argument;
import org.rimefast.lang.rule.Change;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Reference;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;
import org.rimefast.lang.rule.Table;
import org.rimefast.lang.rule.Value;
import org.rimefast.lang.rule.Variable;
import org.rimefast.lang.rule.Withdrawal;
import org.rimefast.lang.source.SourceText;
import org.rimefast.lang.source.Span;

/** Writes typed rules as an indented tree, with ids, variable numbers, exact values and texts. */
final class RuleDump implements Condition.Visitor<Void>, Value.Visitor<Void> {
  private final SourceText source;
  private final StringBuilder out = new StringBuilder();
  private int depth;

  private RuleDump(SourceText source) {
    this.source = source;
  }

  static String of(Standard standard) {
    RuleDump dump = new RuleDump(standard.source());
    dump.line("standard " + standard.name() + " edition " + standard.edition());
    standard.constants().forEach(c -> dump.line("let " + c.name() + " = " + number(c.value())));
    standard
        .base()
        .ifPresent(base -> dump.line("on " + base.name() + " edition " + base.edition()));
    standard.tables().forEach(dump::table);
    standard.rules().forEach(dump::rule);
    standard.cases().forEach(dump::example);
    for (Withdrawal withdrawal : standard.withdrawn()) {
      dump.line("withdrawn " + withdrawal.rule().id());
      dump.change(withdrawal.change());
    }
    return dump.out.toString();
  }

  private void example(Case example) {
    line("case " + example.name() + " of " + example.rule().orElse("every rule"));
    depth++;
    line(
        example
            .plan()
            .accept(
                new CasePlan.Visitor<String>() {
                  @Override
                  public String file(CasePlan.File file) {
                    return "plan " + file.name();
                  }

                  @Override
                  public String inline(CasePlan.Inline inline) {
                    return "plan inline " + inline.json();
                  }
                }));
    example.edits().forEach(edit -> line(edit.toString().replaceAll(", span=.*", "")));
    for (Expectation expectation : example.expectations()) {
      line(expectation.toString().replaceAll(", span=.*", ""));
    }
    depth--;
  }

  private void table(Table table) {
    line("table " + table.name() + " of " + variable(table.element()));
    depth++;
    table.inputs().forEach(input -> input.accept(this));
    for (Table.Row row : table.rows()) {
      line("row " + cells(row.cells()), row.span());
      inner(() -> row.result().accept(this));
    }
    table
        .otherwise()
        .ifPresent(
            last -> {
              line("otherwise", last.span());
              depth++;
              last.result().accept(this);
              last.cases().forEach(cells -> line("in case " + cells(cells)));
              depth--;
            });
    depth--;
  }

  private static String cells(List<Table.Cell> cells) {
    return cells.stream().map(RuleDump::cell).collect(Collectors.joining(" | "));
  }

  private static String cell(Table.Cell cell) {
    if (cell instanceof Table.Cell.Words words) {
      return String.join(", ", words.words());
    }
    return cell instanceof Table.Cell.Numbers numbers
        ? numbers.ranges().stream()
            .map(
                range ->
                    range
                            .low()
                            .map(e -> (e.included() ? "[" : "(") + e.limit().quantity().text())
                            .orElse("(")
                        + "; "
                        + range
                            .high()
                            .map(e -> e.limit().quantity().text() + (e.included() ? "]" : ")"))
                            .orElse(")"))
            .collect(Collectors.joining(" "))
        : "any";
  }

  private void rule(Rule rule) {
    line("rule " + rule.id() + " " + rule.severity() + " from " + rule.stage());
    line("  sentence: " + rule.sentence());
    depth++;
    line("subject " + variable(rule.subject()));
    section("where", rule.where());
    section("only if", rule.onlyIf());
    section("must", Optional.of(rule.requirement()));
    depth--;
    rule.changes().forEach(this::change);
  }

  private void change(Change change) {
    line(
        "  "
            + change.effect()
            + " by "
            + change.standard()
            + " "
            + change.edition()
            + ": "
            + change.kind()
            + " ["
            + change.before()
            + "] to ["
            + change.after()
            + "], because "
            + change.because()
            + change.source().map(source -> " (" + source + ")").orElse("")
            + ": "
            + change.text());
  }

  private void section(String name, Optional<Condition> condition) {
    condition.ifPresent(
        c -> {
          line(name);
          depth++;
          c.accept(this);
          depth--;
        });
  }

  private static String variable(Variable variable) {
    return variable.noun().id() + "#" + variable.index();
  }

  private void line(String text) {
    out.append("  ".repeat(depth)).append(text).append('\n');
  }

  private void line(String text, Span span) {
    line(text + "   <" + source.textOf(span).replaceAll("\\s+", " ") + ">");
  }

  private Void inner(Runnable body) {
    depth++;
    body.run();
    depth--;
    return null;
  }

  private void argument(Argument argument) {
    if (argument instanceof Value value) {
      value.accept(this);
    } else if (argument instanceof Argument.Along along) {
      line(along.stretch().id(), along.span());
      inner(() -> along.arguments().forEach(this::argument));
    } else if (argument instanceof Argument.Those those) {
      line("any " + variable(those.variable()), those.span());
      inner(() -> section("where", those.where()));
    } else {
      line(reference((Reference) argument));
    }
  }

  private static String reference(Reference reference) {
    if (reference instanceof Reference.Linked linked) {
      return linked.link().id() + " of " + reference(linked.owner());
    }
    return variable(((Reference.Bound) reference).variable());
  }

  private static String number(Value.Literal literal) {
    return literal.quantity().text()
        + " ("
        + literal.quantity().si()
        + " "
        + literal.type().dimension().scale()
        + ")";
  }

  private Void parts(String name, List<Condition> parts, Span span) {
    line(name, span);
    return inner(() -> parts.forEach(part -> part.accept(this)));
  }

  @Override
  public Void visitAnd(Condition.And and) {
    return parts("and", and.parts(), and.span());
  }

  @Override
  public Void visitOr(Condition.Or or) {
    return parts("or", or.parts(), or.span());
  }

  @Override
  public Void visitNot(Condition.Not not) {
    return parts("not", List.of(not.part()), not.span());
  }

  @Override
  public Void visitCompare(Condition.Compare compare) {
    line("compare " + compare.comparison().sign(), compare.span());
    return inner(
        () -> {
          compare.left().accept(this);
          compare.right().accept(this);
        });
  }

  @Override
  public Void visitHolds(Condition.Holds holds) {
    line("holds " + holds.relation().id() + " of " + reference(holds.subject()), holds.span());
    return inner(() -> holds.arguments().forEach(this::argument));
  }

  @Override
  public Void visitIsA(Condition.IsA isA) {
    line("is a " + isA.noun().id() + ": " + reference(isA.subject()), isA.span());
    return inner(
        () ->
            isA.term()
                .ifPresent(
                    term -> {
                      line("term " + term.singular() + ", " + term.plural());
                      section("of " + variable(term.element()), Optional.of(term.condition()));
                    }));
  }

  @Override
  public Void visitSame(Condition.Same same) {
    line("same: " + reference(same.left()) + " = " + reference(same.right()), same.span());
    return null;
  }

  @Override
  public Void visitAnswered(Condition.Answered answered) {
    line(
        "answered "
            + (answered.question().answer() ? "yes" : "no")
            + " at "
            + answered.question().inspect()
            + ": "
            + reference(answered.subject()),
        answered.span());
    return inner(
        () -> {
          line("ask " + answered.question().ask());
          answered
              .question()
              .limit()
              .ifPresent(
                  limit -> {
                    line("reading " + limit.comparison().sign());
                    inner(() -> limit.value().accept(this));
                  });
        });
  }

  @Override
  public Void visitQuantified(Condition.Quantified quantified) {
    line(
        quantified.quantifier()
            + (quantified.number() == 0 ? "" : " " + quantified.number())
            + (quantified.others() ? " other " : " ")
            + variable(quantified.variable()),
        quantified.span());
    return inner(
        () -> {
          section("where", quantified.where());
          section("holds", Optional.of(quantified.body()));
        });
  }

  @Override
  public Void visitLiteral(Value.Literal literal) {
    line(number(literal), literal.span());
    return null;
  }

  @Override
  public Void visitWord(Value.Word word) {
    line(word.type().name() + " word " + word.word());
    return null;
  }

  @Override
  public Void visitText(Value.Text text) {
    line("text " + text.text());
    return null;
  }

  @Override
  public Void visitNamed(Value.Named named) {
    line("constant " + named.constant().name());
    return null;
  }

  @Override
  public Void visitOf(Value.Of of) {
    line(of.property().id() + " of " + reference(of.owner()), of.span());
    return inner(() -> of.arguments().forEach(this::argument));
  }

  @Override
  public Void visitArithmetic(Value.Arithmetic arithmetic) {
    line(arithmetic.operator() + " in " + arithmetic.type().example().symbol(), arithmetic.span());
    return inner(
        () -> {
          arithmetic.left().accept(this);
          arithmetic.right().accept(this);
        });
  }

  @Override
  public Void visitLookup(Value.Lookup lookup) {
    line("table " + lookup.table().name() + " of " + reference(lookup.owner()), lookup.span());
    return null;
  }

  @Override
  public Void visitConditional(Value.Conditional conditional) {
    line("choice of " + conditional.type().getClass().getSimpleName(), conditional.span());
    return inner(
        () -> {
          section("if", Optional.of(conditional.condition()));
          conditional.then().accept(this);
          conditional.otherwise().accept(this);
        });
  }

  @Override
  public Void visitAggregate(Value.Aggregate aggregate) {
    line(aggregate.function() + " over " + variable(aggregate.variable()), aggregate.span());
    return inner(
        () -> {
          section("where", aggregate.where());
          aggregate.of().ifPresent(value -> value.accept(this));
        });
  }
}
