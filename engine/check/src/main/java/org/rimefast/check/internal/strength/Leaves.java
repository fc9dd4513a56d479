package org.rimefast.check.internal.strength;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimefast.lang.rule.Argument;
import org.rimefast.lang.rule.Condition;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Value;

/** Finds the conditions of a rule that hold no other, in the order of its text. */
final class Leaves implements Condition.Visitor<Void>, Value.Visitor<Void> {
  private final List<Condition> found = new ArrayList<>();

  private Leaves() {}

  static List<Condition> of(Rule rule) {
    Leaves leaves = new Leaves();
    leaves.visit(rule.where());
    leaves.visit(rule.onlyIf());
    rule.requirement().accept(leaves);
    return leaves.found;
  }

  private void visit(Optional<Condition> condition) {
    condition.ifPresent(c -> c.accept(this));
  }

  @SuppressWarnings("NullAway") // Void has no value
  private Void leaf(Condition condition) {
    found.add(condition);
    return null;
  }

  private void visit(List<Argument> arguments) {
    for (Argument argument : arguments) {
      if (argument instanceof Value value) {
        value.accept(this);
      } else if (argument instanceof Argument.Those those) {
        visit(those.where());
      } else if (argument instanceof Argument.Along along) {
        visit(along.arguments());
      }
    }
  }

  @Override
  public Void visitAnd(Condition.And and) {
    and.parts().forEach(part -> part.accept(this));
    return null;
  }

  @Override
  public Void visitOr(Condition.Or or) {
    or.parts().forEach(part -> part.accept(this));
    return null;
  }

  @Override
  public Void visitNot(Condition.Not not) {
    return not.part().accept(this);
  }

  @Override
  public Void visitCompare(Condition.Compare compare) {
    leaf(compare);
    compare.left().accept(this);
    return compare.right().accept(this);
  }

  @Override
  public Void visitHolds(Condition.Holds holds) {
    leaf(holds);
    visit(holds.arguments());
    return null;
  }

  @Override
  public Void visitIsA(Condition.IsA isA) {
    return leaf(isA);
  }

  @Override
  public Void visitAnswered(Condition.Answered answered) {
    return leaf(answered);
  }

  @Override
  public Void visitSame(Condition.Same same) {
    return leaf(same);
  }

  @Override
  public Void visitQuantified(Condition.Quantified quantified) {
    visit(quantified.where());
    return quantified.body().accept(this);
  }

  @Override
  public Void visitLiteral(Value.Literal literal) {
    return null;
  }

  @Override
  public Void visitWord(Value.Word word) {
    return null;
  }

  @Override
  public Void visitText(Value.Text text) {
    return null;
  }

  @Override
  public Void visitNamed(Value.Named named) {
    return null;
  }

  @Override
  public Void visitOf(Value.Of of) {
    visit(of.arguments());
    return null;
  }

  @Override
  public Void visitArithmetic(Value.Arithmetic arithmetic) {
    arithmetic.left().accept(this);
    return arithmetic.right().accept(this);
  }

  @Override
  public Void visitAggregate(Value.Aggregate aggregate) {
    visit(aggregate.where());
    aggregate.of().ifPresent(value -> value.accept(this));
    return null;
  }

  @Override
  public Void visitConditional(Value.Conditional conditional) {
    conditional.condition().accept(this);
    conditional.then().accept(this);
    return conditional.otherwise().accept(this);
  }

  @Override
  @SuppressWarnings("NullAway") // Void has no value
  public Void visitLookup(Value.Lookup lookup) {
    return null;
  }
}
