package org.rimefast.lang.rule;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The numbers, constants, terms and tables that a rule stands on. */
public final class RuleUses implements Condition.Visitor<Boolean>, Value.Visitor<Boolean> {
  private final boolean withinTerms;
  private final List<Value.Literal> literals = new ArrayList<>();
  private final Map<String, Constant> constants = new LinkedHashMap<>();
  private final Map<String, Term> terms = new LinkedHashMap<>();
  private final Map<String, Table> tables = new LinkedHashMap<>();

  private RuleUses(boolean withinTerms) {
    this.withinTerms = withinTerms;
  }

  /** Of the rule's own sentence. */
  public static RuleUses ofSentence(Rule rule) {
    return of(rule, false);
  }

  /** Of the rule's own sentence, and of the terms and tables in it, and of those in them. */
  public static RuleUses ofAll(Rule rule) {
    return of(rule, true);
  }

  private static RuleUses of(Rule rule, boolean withinTerms) {
    RuleUses uses = new RuleUses(withinTerms);
    uses.in(rule.where());
    uses.in(rule.onlyIf());
    uses.in(Optional.of(rule.requirement()));
    return uses;
  }

  /** Numbers that are written in the sentence, in order. */
  public List<Value.Literal> literals() {
    return literals;
  }

  /** Constants, by name. */
  public Map<String, Constant> constants() {
    return constants;
  }

  /** Terms, by name. */
  public Map<String, Term> terms() {
    return terms;
  }

  /** Tables, by name. */
  public Map<String, Table> tables() {
    return tables;
  }

  private void in(Optional<Condition> condition) {
    condition.ifPresent(part -> part.accept(this));
  }

  private void arguments(List<Argument> arguments) {
    for (Argument argument : arguments) {
      if (argument instanceof Value value) {
        value.accept(this);
      } else if (argument instanceof Argument.Along along) {
        arguments(along.arguments());
      } else if (argument instanceof Argument.Those those) {
        in(those.where());
      }
    }
  }

  @Override
  public Boolean visitAnd(Condition.And and) {
    and.parts().forEach(part -> part.accept(this));
    return true;
  }

  @Override
  public Boolean visitOr(Condition.Or or) {
    or.parts().forEach(part -> part.accept(this));
    return true;
  }

  @Override
  public Boolean visitNot(Condition.Not not) {
    not.part().accept(this);
    return true;
  }

  @Override
  public Boolean visitCompare(Condition.Compare compare) {
    compare.left().accept(this);
    compare.right().accept(this);
    return true;
  }

  @Override
  public Boolean visitHolds(Condition.Holds holds) {
    arguments(holds.arguments());
    return true;
  }

  @Override
  public Boolean visitSame(Condition.Same same) {
    return true;
  }

  @Override
  public Boolean visitAnswered(Condition.Answered answered) {
    answered.question().limit().ifPresent(limit -> limit.value().accept(this));
    return true;
  }

  @Override
  public Boolean visitIsA(Condition.IsA isA) {
    Optional<Term> term = isA.term();
    if (term.isPresent() && terms.putIfAbsent(term.get().singular(), term.get()) == null) {
      in(withinTerms ? Optional.of(term.get().condition()) : Optional.empty());
    }
    return true;
  }

  @Override
  public Boolean visitQuantified(Condition.Quantified quantified) {
    in(quantified.where());
    quantified.body().accept(this);
    return true;
  }

  @Override
  public Boolean visitLiteral(Value.Literal literal) {
    literals.add(literal);
    return true;
  }

  @Override
  public Boolean visitWord(Value.Word word) {
    return true;
  }

  @Override
  public Boolean visitText(Value.Text text) {
    return true;
  }

  @Override
  public Boolean visitNamed(Value.Named named) {
    constants.putIfAbsent(named.constant().name(), named.constant());
    return true;
  }

  @Override
  public Boolean visitOf(Value.Of of) {
    arguments(of.arguments());
    return true;
  }

  @Override
  public Boolean visitArithmetic(Value.Arithmetic arithmetic) {
    arithmetic.left().accept(this);
    arithmetic.right().accept(this);
    return true;
  }

  @Override
  public Boolean visitAggregate(Value.Aggregate aggregate) {
    in(aggregate.where());
    aggregate.of().ifPresent(value -> value.accept(this));
    return true;
  }

  @Override
  public Boolean visitLookup(Value.Lookup lookup) {
    Table table = lookup.table();
    if (tables.putIfAbsent(table.name(), table) == null && withinTerms) {
      table.inputs().forEach(input -> input.accept(this));
    }
    return true;
  }

  @Override
  public Boolean visitConditional(Value.Conditional conditional) {
    conditional.condition().accept(this);
    conditional.then().accept(this);
    return conditional.otherwise().accept(this);
  }
}
